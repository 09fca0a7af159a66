using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a fitted band: its chips on their stations, its rules and its grooves.</summary>
internal sealed class BandDrawing(TriangleBand band, Fitting fitting, BandPlan plan)
{
    private double Pitch => 2 * plan.Parts[0].HalfPitch;

    /// <summary>Returns the band with its lowest rule at y = 0, its rules from one x to another.</summary>
    internal PatternNode Draw(double rulesFrom, double rulesTo) =>
        GroupNode.Of(Lines(rulesFrom, rulesTo), Carved());

    /// <summary>Returns the chips and the centre motif alone, placed in the same way.</summary>
    internal PatternNode Carved()
    {
        List<PatternNode> nodes = [.. band.Rows.Select(Row)];
        if (fitting.Centre is { } centre)
            nodes.Add(new PlacedNode(centre.Root, Transform.Move(plan.Middle, band.Height / 2)));
        return GroupNode.Of(nodes);
    }

    private MotifNode Lines(double from, double to)
    {
        Chain Rule(double y) => Chain.Line(new(from, y), new(to, y));
        Chain End(double x) => Chain.Line(new(x, 0), new(x, band.Height));
        List<Chain> lines = [];
        foreach (var y in band.Rules)
            lines.Add(Rule(y));
        foreach (var part in plan.Parts)
        foreach (var x in (double[])[part.Start, part.At(part.Halves)])
            if (x > from && x < to)
                lines.Add(End(x));
        return new MotifNode
        {
            LayoutLines = [.. lines],
            LineCuts = [.. plan.Parts.SelectMany(Grooves)],
        };
    }

    private IEnumerable<LineCut> Grooves(Stations part) =>
        band.GrooveHeights()
            .Select(y => new LineCut(
                Chain.Line(new(part.Start, y), new(part.At(part.Halves), y)),
                band.LineCutWidth
            ));

    private PatternNode Row(TriangleRow row)
    {
        IEnumerable<PatternNode> pieces =
            plan.Parts.Count == 2
                ? [.. Part(row, plan.Parts[0]), .. MirroredPart(row, plan.Parts[1])]
            : fitting.Ends == EndRule.TurnedAtMiddle ? TurnedPart(row, plan.Parts[0])
            : Part(row, plan.Parts[0]);
        return GroupNode.InSameRows(pieces);
    }

    /// <summary>The row as it comes.</summary>
    private IEnumerable<PatternNode> Part(TriangleRow row, Stations part) =>
        Whole(row, part, Span(row, part));

    /// <summary>The mirror image of the row in the middle of a part.</summary>
    private IEnumerable<PatternNode> MirroredPart(TriangleRow row, Stations part)
    {
        var (first, count) = Span(row, part);
        return Whole(row.MirroredLeftRight(), part, (part.Halves - first - 2 * count, count));
    }

    private IEnumerable<PatternNode> Whole(
        TriangleRow row,
        Stations part,
        (int First, int Count) span
    )
    {
        var shape = new TriangleShape(row, band, Pitch);
        if (EndsInHalves(row))
            yield return Single(shape.RightHalf(), part, span.First - 2);
        if (span.Count > 0)
            yield return new RepeatNode(Leaf(shape.Chip), part, span.First, span.Count);
        if (EndsInHalves(row))
            yield return Single(shape.LeftHalf(), part, span.First + 2 * span.Count);
    }

    /// <summary>The row up to the middle of the part, then its mirror image.</summary>
    private IEnumerable<PatternNode> TurnedPart(TriangleRow row, Stations part)
    {
        var shape = new TriangleShape(row, band, Pitch);
        var mirrored = new TriangleShape(row.MirroredLeftRight(), band, Pitch);
        var (first, count) = Span(row, part);
        var half = count / 2;
        if (EndsInHalves(row))
            yield return Single(shape.RightHalf(), part, first - 2);
        if (half > 0)
            yield return new RepeatNode(Leaf(shape.Chip), part, first, half);
        // An odd count leaves one chip astride the middle, which only an upright chip can straddle.
        if (count % 2 == 1 && row.IsUpright)
            yield return Single(shape.Chip, part, first + 2 * half);
        if (half > 0)
            yield return new RepeatNode(
                Leaf(mirrored.Chip),
                part,
                first + 2 * (count - half),
                half
            );
        if (EndsInHalves(row))
            yield return Single(mirrored.LeftHalf(), part, first + 2 * count);
    }

    /// <summary>The station where the whole chips of a row begin, and their number.</summary>
    private (int First, int Count) Span(TriangleRow row, Stations part)
    {
        var repeats = part.Halves / 2;
        if (!row.IsStaggered)
            return (0, repeats);
        return (1, plan.HasExtraHalf ? repeats : repeats - 1);
    }

    private bool EndsInHalves(TriangleRow row) =>
        row.IsStaggered && fitting.StaggeredEnds == StaggeredEnds.HalfChips;

    private static RepeatNode Single(ChipShape? chip, Stations part, int at) =>
        new(Leaf(chip), part, at, 1);

    private static MotifNode Leaf(ChipShape? chip) =>
        chip is null
            ? MotifNode.Empty
            : new MotifNode
            {
                ChipRows =
                [
                    [chip],
                ],
            };
}
