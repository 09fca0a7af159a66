using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Joins the loose runs of a file end to end, into contours where they close.</summary>
/// <remarks>
/// Nouns. A <em>run</em> is what one entity or element draws; an <em>end</em> is either end of an open one. Doubled corners go
/// first, then runs drawn twice and those too short to tell their ends apart; then ends are paired (<see cref="EndPairs"/>) and
/// the runs followed from end to end. Everything takes time in proportion to the number of runs, and the order is that of the
/// file: a contour or chain stands where its first run does and goes the way that this one goes.
/// </remarks>
internal sealed class RunJoiner
{
    private readonly ImportedCurves _curves;
    private readonly double _near;
    private readonly double _merge;

    private RunJoiner(ImportedCurves curves)
    {
        _curves = curves;
        _merge = MergeOf(curves.Runs);
        _near = Math.Max(_merge, curves.Settings.JoinWithin);
    }

    /// <summary>The contours and chains; what was changed or left open is noted with the curves.</summary>
    internal static JoinedRuns Join(ImportedCurves curves) => new RunJoiner(curves).Join();

    private JoinedRuns Join()
    {
        var clean = Clean();
        Chain[] open = [.. clean.OfType<Chain>()];
        var pairs = new EndPairs(open, _merge, _near);
        NoteJoints(pairs);
        var walk = new RunWalk(open, pairs);
        var joined = new JoinedRuns([], [], pairs.Closed.Widest);
        var number = 0;
        foreach (var run in clean)
            if (run is Contour contour)
                joined.Contours.Add(contour);
            else if (walk.From(number++) is { } walked)
                Add(joined, run, CleanRun.Of(walked.Corners, walked.Closes, _merge));
        return joined;
    }

    private void Add(JoinedRuns joined, SegmentRun first, SegmentRun? run)
    {
        switch (run)
        {
            case Contour contour:
                joined.Contours.Add(contour);
                break;
            case Chain chain:
                joined.Chains.Add(chain);
                break;
            default:
                NoteShort(first);
                break;
        }
    }

    private List<SegmentRun> Clean()
    {
        var clean = new List<SegmentRun>(_curves.Runs.Count);
        using var keys = new RunKeys(_merge, _curves.Runs.Count);
        foreach (var run in _curves.Runs)
        {
            var kept = CleanRun.Of(run, _merge);
            if (kept is not null && kept.Count < run.Count)
                _curves.Note(ImportNoteKind.Changed, "doubled corner, made one", At(run));
            if (kept is Contour { Count: 2 } ring && ring.At(0).IsLine && ring.At(1).IsLine)
            {
                _curves.Note(ImportNoteKind.Changed, "line there and back, drawn once", At(run));
                kept = Chain.Line(ring.Span[0].Point, ring.Span[1].Point);
            }
            if (kept is null || IsShort(kept))
                NoteShort(run);
            else if (keys.IsDrawn(kept))
                _curves.Note(ImportNoteKind.Skipped, "curve drawn before", At(run));
            else
                clean.Add(kept);
        }
        return clean;
    }

    /// <summary>Whether a run is no longer than what may lie between two ends that are joined; an arc is longer than its chord.</summary>
    private bool IsShort(SegmentRun run)
    {
        double length = 0;
        for (var i = 0; i < run.Count && length <= _near; i++)
            length += run.At(i).Chord.Length;
        return length <= _near;
    }

    private void NoteShort(SegmentRun run) =>
        _curves.Note(
            ImportNoteKind.Skipped,
            $"curve of no more than {Guard.Text(_near)} mm, within which ends are joined",
            At(run)
        );

    private void NoteJoints(EndPairs pairs)
    {
        var (widest, place, count) = pairs.Closed;
        if (count > 0)
            _curves.Note(
                ImportNoteKind.Changed,
                $"loose ends brought together over a gap, the widest {Guard.Text(Math.Ceiling(widest * 1e6) / 1e6)} mm",
                At(place),
                count
            );
        foreach (var (at, ends) in pairs.Forks)
            _curves.Note(
                ImportNoteKind.LeftOpen,
                $"{ends} ends in one point, which do not say how they belong together",
                At(at)
            );
    }

    private static string At(SegmentRun run) => At(run.Span[0].Point);

    private static string At(Point point) => $"{point} mm";

    private static double MergeOf(List<SegmentRun> runs)
    {
        if (runs.Count == 0)
            return default(Tolerance).Merge;
        var (left, low) = (double.PositiveInfinity, double.PositiveInfinity);
        var (right, high) = (double.NegativeInfinity, double.NegativeInfinity);
        foreach (var run in runs)
        foreach (ref readonly var corner in run.Span)
        {
            (left, right) = (Math.Min(left, corner.Point.X), Math.Max(right, corner.Point.X));
            (low, high) = (Math.Min(low, corner.Point.Y), Math.Max(high, corner.Point.Y));
        }
        return Tolerance.ForExtent(Math.Max(right - left, high - low)).Merge;
    }
}
