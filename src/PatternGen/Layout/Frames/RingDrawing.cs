using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws what of a ring runs into the mitres: rules, grooves and the chips that the mitres have shaped.</summary>
internal sealed class RingDrawing(FrameOutline outline, FrameRing ring, MitreLine[] mitres)
{
    /// <summary>Rules of a side, from mitre to mitre.</summary>
    internal MotifNode Rules(int side) =>
        new() { LayoutLines = [.. ring.Band.Rules.Select(y => Rule(side, y))] };

    /// <summary>The margins' grooves, each cut all round.</summary>
    internal MotifNode Grooves() =>
        new()
        {
            LineCuts =
            [
                .. ring
                    .Band.GrooveHeights()
                    .Select(y => new LineCut(Round(y), ring.Band.LineCutWidth)),
            ],
        };

    /// <summary>A row of chips between two mitres.</summary>
    internal PatternNode Row(int side, IReadOnlyList<RowPiece> pieces) =>
        pieces.Count == 0
            ? new MotifNode
            {
                ChipRows =
                [
                    [],
                ],
            }
            : GroupNode.InSameRows(pieces.Select(piece => Piece(side, piece)));

    /// <summary>Chips that lie where they are drawn, as one row.</summary>
    internal static MotifNode Chips(params IEnumerable<ChipShape> chips) =>
        new()
        {
            ChipRows =
            [
                [.. chips],
            ],
        };

    /// <summary>Where a place of a side lies, y counted from the lowest rule; one on a mitre is the mitre's.</summary>
    internal Point Place(int side, Point point)
    {
        var edge = outline.Sides[side];
        var merge = Tolerance.ForExtent(edge.Length).Merge;
        var height = ring.From + point.Y;
        if (Math.Abs(point.X - edge.StartAt(height)) <= merge)
            return mitres[side].At(height);
        if (Math.Abs(edge.Length - height * edge.Last - point.X) <= merge)
            return mitres[(side + 1) % mitres.Length].At(height);
        return Placement(side).Apply(point);
    }

    private Transform Placement(int side) =>
        Transform.Move(0, ring.From).Then(outline.Sides[side].Placement);

    /// <summary>A line all round. It begins in the middle of a side, so that no corner is an end of it.</summary>
    private Chain Round(double y)
    {
        Point[] corners = [.. mitres.Select(mitre => mitre.At(ring.From + y))];
        var middle = corners[^1].Towards(corners[0], 0.5);
        return new([new Vertex(middle), .. corners.Select(corner => new Vertex(corner)), middle]);
    }

    private Chain Rule(int side, double y) =>
        Chain.Line(
            mitres[side].At(ring.From + y),
            mitres[(side + 1) % mitres.Length].At(ring.From + y)
        );

    private PatternNode Piece(int side, RowPiece piece) =>
        piece.Stations is { } stations
            ? new PlacedNode(
                new RepeatNode(Chips(piece.Chip), stations, piece.First, piece.Count),
                Placement(side)
            )
            : Chips(Shaped(side, piece.Chip));

    private ChipShape Shaped(int side, ChipShape chip) =>
        new ChipShape(
            new(
                chip.Outline.Vertices.Select(vertex => new Vertex(
                    Place(side, vertex.Point),
                    vertex.Bulge
                ))
            )
        ).WithCut(chip.Cut);
}
