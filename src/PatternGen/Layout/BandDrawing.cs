using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a fitted band: its chips on their stations, its rules and its grooves.</summary>
/// <param name="band">The band.</param>
/// <param name="fitting">How it was asked to be fitted.</param>
/// <param name="plan">Where its parts lie.</param>
/// <param name="track">What it runs along; the x axis if not given.</param>
internal sealed class BandDrawing(
    TriangleBand band,
    Fitting fitting,
    BandPlan plan,
    BandTrack? track = null
)
{
    private readonly BandTrack _track = track ?? StraightTrack.Instance;

    private double Pitch => 2 * plan.Parts[0].HalfPitch;

    /// <summary>Returns the band with its lowest rule at y = 0, its rules from one x to another.</summary>
    internal PatternNode Draw(double rulesFrom, double rulesTo) =>
        GroupNode.Of(Lines(rulesFrom, rulesTo), Carved());

    /// <summary>Returns the chips and the centre motif alone, placed in the same way.</summary>
    internal PatternNode Carved()
    {
        List<PatternNode> nodes = [.. band.Rows.Select(Row)];
        if (fitting.Centre is { } centre)
            nodes.Add(new PlacedNode(centre.Root, _track.Place(plan.Middle, band.Height / 2)));
        return GroupNode.Of(nodes);
    }

    private MotifNode Lines(double from, double to)
    {
        List<Chain> lines = [];
        foreach (var y in band.Rules)
            lines.Add(_track.Along(from, to, y));
        foreach (var x in Ends())
            if (x > from && x < to)
                lines.Add(_track.Across(x, band.Height));
        return new MotifNode
        {
            LayoutLines = [.. lines],
            LineCuts = [.. plan.Parts.SelectMany(Grooves)],
        };
    }

    private IEnumerable<double> Ends() =>
        _track.IsClosed
            ? []
            : plan.Parts.SelectMany(part => (IEnumerable<double>)[part.Start, part.End]);

    private IEnumerable<LineCut> Grooves(Stations part) =>
        band.GrooveHeights()
            .Select(y => new LineCut(_track.Along(part.Start, part.End, y), band.LineCutWidth));

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
            yield return _track.Repeat(shape.Chip, part, span.First, span.Count);
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
            yield return _track.Repeat(shape.Chip, part, first, half);
        // An odd count leaves one chip astride the middle, which only an upright chip can straddle.
        if (count % 2 == 1 && row.IsUpright)
            yield return Single(shape.Chip, part, first + 2 * half);
        if (half > 0)
            yield return _track.Repeat(mirrored.Chip, part, first + 2 * (count - half), half);
        if (EndsInHalves(row))
            yield return Single(mirrored.LeftHalf(), part, first + 2 * count);
    }

    /// <summary>The station where the whole chips of a row begin, and their number.</summary>
    private (int First, int Count) Span(TriangleRow row, Stations part)
    {
        var repeats = part.Halves / 2;
        if (!row.IsStaggered)
            return (0, repeats);
        // Round a closed line there is no end that would cut a chip off.
        if (_track.IsClosed)
            return (1, repeats);
        return (1, plan.HasExtraHalf ? repeats : repeats - 1);
    }

    private bool EndsInHalves(TriangleRow row) =>
        row.IsStaggered && fitting.StaggeredEnds == StaggeredEnds.HalfChips && !_track.IsClosed;

    private PatternNode Single(ChipShape? chip, Stations part, int at) =>
        chip is null ? MotifNode.Empty : _track.Repeat(chip, part, at, 1);
}
