namespace PatternGen.Gallery.Topics;

/// <summary>Pieces to look at, each as drawn and as it will look carved, and as DXF for a machine.</summary>
/// <param name="title">What the topic is called.</param>
/// <param name="folder">Where the files go.</param>
/// <param name="pieces">The pieces.</param>
internal sealed class CarvedPieces(string title, string folder, params CarvedPieces.Piece[] pieces)
    : ITopic
{
    public string Title => title;

    public string Folder => folder;

    public IReadOnlyList<Work> Works => [.. pieces.SelectMany(Files)];

    public IReadOnlyList<Exhibit> Exhibits =>
        [
            .. pieces.Select(piece => new Exhibit(
                $"{piece.Name}.png",
                piece.Caption,
                [$"{piece.Name}.svg", $"{piece.Name}-carved.svg", $"{piece.Name}.dxf"]
            )),
        ];

    /// <summary>What turns corners and follows curves.</summary>
    internal static CarvedPieces Layouts(string folder) =>
        new(
            "Frames, rings and paths",
            folder,
            new Piece(
                "mirror-frame",
                "A mirror frame with mitred corners, one band within another",
                LayoutPieces.MirrorFrame
            ),
            new Piece(
                "picture-frame",
                "A picture frame with a rosette in each corner",
                LayoutPieces.PictureFrame
            ),
            new Piece("tray", "A tray: the band bends round the corners", LayoutPieces.Tray),
            new Piece("hexagonal-box", "The lid of a hexagonal box", LayoutPieces.HexagonalBox),
            new Piece(
                "clock-face",
                "A clock face: two bands as rings round a rosette",
                LayoutPieces.ClockFace
            ),
            new Piece(
                "bread-box-lid",
                "A vine along the outline of a lid, which comes from an SVG file",
                LayoutPieces.BreadBoxLid
            ),
            new Piece(
                "chest-panel",
                "A chest panel: frame, field and rosette in one expression",
                LayoutPieces.ChestPanel
            )
        );

    /// <summary>What fills areas.</summary>
    internal static CarvedPieces Fields(string folder) =>
        new(
            "Fields",
            folder,
            new Piece(
                "fields",
                "Nine fields, each a lattice within an outline",
                ContactSheet.Of("Nine fields", FieldPieces.All, columns: 3)
            )
        );

    /// <summary>What is drawn without ruler and compass.</summary>
    internal static CarvedPieces FreeForms(string folder) =>
        new(
            "Free forms",
            folder,
            new Piece("free-forms", "Leaves, strokes, flowers and stems", FreeFormPieces.Sheet),
            new Piece("vine", "A vine for the edge of a shelf", FreeFormPieces.Vine)
        );

    private IEnumerable<Work> Files(Piece piece)
    {
        var carved = $"{piece.Name}-carved.svg";
        yield return new(
            $"{piece.Name}.svg",
            (path, stop) => piece.Pattern.SaveAsync(path, cancellation: stop)
        );
        yield return new(
            $"{piece.Name}.dxf",
            (path, stop) => piece.Pattern.SaveAsync(path, cancellation: stop)
        );
        yield return new(carved, piece.Pattern.Preview(CarvingTopic.Knife).SaveAsync);
        yield return Work.Picture($"{piece.Name}.png", folder, of: carved);
    }

    /// <summary>A piece of wood with its pattern.</summary>
    /// <param name="Name">Its files' name.</param>
    /// <param name="Caption">What it shows.</param>
    /// <param name="Pattern">The pattern.</param>
    internal sealed record Piece(string Name, string Caption, Pattern Pattern);
}
