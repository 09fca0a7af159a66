using PatternGen.Geometry;

namespace PatternGen;

/// <summary>An end of an open run, told by a number: twice that of the run, and one more for the end that it arrives at.</summary>
internal static class RunEnd
{
    internal static int Start(int run) => 2 * run;

    internal static int Run(int end) => end / 2;

    internal static bool IsArriving(int end) => (end & 1) == 1;

    /// <summary>The other end of the same run.</summary>
    internal static int Across(int end) => end ^ 1;

    internal static Point Place(Chain[] runs, int end) =>
        IsArriving(end) ? runs[Run(end)].End : runs[Run(end)].Start;

    /// <summary>The direction in which the run leaves its end, into itself.</summary>
    internal static Vector Inwards(Chain[] runs, int end)
    {
        var run = runs[Run(end)];
        return IsArriving(end)
            ? run.SegmentAt(run.Count - 1).Reversed().TangentAt(0)
            : run.SegmentAt(0).TangentAt(0);
    }
}
