using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A place where the direction of a path jumps.</summary>
/// <param name="Length">Where it lies along the path, in mm.</param>
/// <param name="Point">The corner.</param>
/// <param name="Tangent">Across the bisector: the direction of travel half-way through the turn, of length 1.</param>
/// <param name="Turn">By how much the path turns there, in radians, to the left if positive.</param>
internal readonly record struct PathCorner(double Length, Point Point, Vector Tangent, double Turn)
{
    /// <summary>
    /// Longest way to a mitre and along a side, as a multiple of the offset: sharper corners would throw a motif far off.
    /// The same as for mitred parallels.
    /// </summary>
    private const double Farthest = 4;

    /// <summary>Distance from the corner to where the parallels of both sides cross, as a multiple of their distance.</summary>
    internal double Mitre => Math.Min(Farthest, 1 / Math.Cos(Turn / 2));

    /// <summary>By how much the parallel on the inside of the corner ends before the corner, as a multiple of its distance.</summary>
    internal double Shortening => Math.Min(Farthest, Math.Tan(Math.Abs(Turn) / 2));

    /// <summary>Returns the corners of a path, in order.</summary>
    /// <param name="path">The path.</param>
    /// <param name="least">Joints that turn by less are none.</param>
    internal static PathCorner[] Of(SegmentRun path, Angle least)
    {
        List<PathCorner> corners = [];
        Segment? before = path.IsClosed ? Last(path) : null;
        for (var i = 0; i < path.Count; i++)
        {
            var segment = path.At(i);
            if (segment.Start == segment.End)
                continue;
            if (before is { } arriving)
            {
                var (from, to) = (arriving.TangentAt(arriving.Length), segment.TangentAt(0));
                var turn = Math.Atan2(from.Cross(to), from.Dot(to));
                if (Math.Abs(turn) >= least.Radians)
                    corners.Add(
                        new(
                            path.StartOf(i),
                            segment.Start,
                            Transform.Rotate(Angle.FromRadians(turn / 2)).Apply(from),
                            turn
                        )
                    );
            }
            before = segment;
        }
        return [.. corners];
    }

    private static Segment? Last(SegmentRun path)
    {
        for (var i = path.Count - 1; i >= 0; i--)
            if (path.At(i) is var segment && segment.Start != segment.End)
                return segment;
        return null;
    }
}
