using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>Where a V bit goes to cut a rosette, as a file for a router and as a picture of it from above.</summary>
internal sealed class GroovesTopic(string folder) : ITopic
{
    private const double BoardSide = 100;

    private static Pattern Board =>
        Rosette
            .Petals(12, radius: 40)
            .Carve(part => part.IsPetal)
            .With(
                Pattern.OfStock(
                    Contour.Rectangle(
                        new(-BoardSide / 2, -BoardSide / 2),
                        new(BoardSide / 2, BoardSide / 2)
                    )
                )
            )
            .Named("Twelve petals on a board");

    private static GroovePaths Paths =>
        Board.GroovePaths(VBit.Of(includedDegrees: 60, diameter: 12));

    public string Title => "Groove paths for a router";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            new("grooves.dxf", (path, stop) => Paths.SaveAsync(path, cancellation: stop)),
            new("grooves.svg", (path, stop) => FromAbove.SaveAsync(path, cancellation: stop)),
            Work.Picture("grooves.png", folder, of: "grooves.svg"),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [new("grooves.png", string.Join(". ", Paths.Notes()), ["grooves.dxf", "grooves.svg"])];

    /// <summary>The chips with the paths as lines.</summary>
    private static Pattern FromAbove =>
        Board.With(
            Pattern.OfLayoutLines(
                Paths.Paths.Select(path => new Chain(
                    path.Places.Select(place => new Vertex(place.Point))
                ))
            )
        );
}
