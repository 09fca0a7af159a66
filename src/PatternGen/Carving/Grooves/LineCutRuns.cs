using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Makes the path of a line cut.</summary>
/// <remarks>
/// Its valley is the line itself. On an arc of radius R, walked at a steady rate together with a chord of length s, the two
/// are never farther apart than s²/(8R); the depth is linear along both. See <see cref="GrooveAccuracy"/> for what follows from it.
/// </remarks>
internal static class LineCutRuns
{
    private const int MostPieces = 1 << 16;

    /// <param name="cut">The line cut.</param>
    /// <param name="clearance">How much may be left standing, as clearance.</param>
    internal static GrooveRun Of(LineCut cut, double clearance)
    {
        var knots = new List<GrooveKnot>();
        double start = 0;
        foreach (var segment in cut.Path.Segments)
        {
            foreach (var (from, to) in Stretches(cut, start, segment.Length))
                AddStretch(knots, cut, segment, start, (from, to), clearance);
            start += segment.Length;
        }
        knots.Add(new(cut.Path.End, ClearanceAt(cut, start), 0));
        return GrooveRun.Of(cut.Profile.IsTapering ? GrooveEntry.Tip : GrooveEntry.Plunge, knots);
    }

    /// <summary>The parts of a segment along which the width is linear, by the distance from the segment's start.</summary>
    private static IEnumerable<(double From, double To)> Stretches(
        LineCut cut,
        double start,
        double length
    )
    {
        var whole = cut.Path.Length;
        var taper = cut.Profile.TaperOn(whole);
        double from = 0;
        foreach (var bend in new[] { taper - start, whole - taper - start })
            if (bend > from && bend < length)
            {
                yield return (from, bend);
                from = bend;
            }
        yield return (from, length);
    }

    private static void AddStretch(
        List<GrooveKnot> knots,
        LineCut cut,
        Segment segment,
        double start,
        (double From, double To) stretch,
        double clearance
    )
    {
        var length = stretch.To - stretch.From;
        var bend = Math.Abs(segment.Curvature);
        // Half the accuracy for the distance, half for the lift that it asks for.
        var count = (int)
            Math.Clamp(Math.Ceiling(length * Math.Sqrt(bend / (4 * clearance))), 1, MostPieces);
        var rise = Square(length / count) * bend / 8;
        for (var i = 0; i < count; i++)
        {
            var along = stretch.From + length * i / count;
            var point = along == 0 ? segment.Start : segment.PointAt(along);
            knots.Add(new(point, ClearanceAt(cut, start + along), rise));
        }
    }

    private static double ClearanceAt(LineCut cut, double along) =>
        cut.Width / 2 * cut.Profile.ShareAt(along, cut.Path.Length);

    private static double Square(double value) => value * value;
}
