using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Point = PatternGen.Geometry.Point;

namespace PatternGen.Tests.Geometry;

/// <summary>How well a run of arcs follows a curve, judged by many places of both.</summary>
internal static class Following
{
    /// <summary>Largest distance from the curve to the run, and from the run to the curve.</summary>
    /// <param name="run">What follows.</param>
    /// <param name="curve">The true curve from 0 to 1, by a formula of the test's own.</param>
    /// <param name="places">Places on the curve; those on the run are as many.</param>
    internal static (double ToRun, double ToCurve) Measure(
        SegmentRun run,
        Func<double, Point> curve,
        int places = 20_000
    )
    {
        var points = Enumerable
            .Range(0, places + 1)
            .Select(i => curve((double)i / places))
            .ToArray();
        var toRun = points.Where((_, i) => i % 10 == 0).Max(point => run.DistanceTo(point));
        var line = new IndexedFacetDistance(
            new LineString([.. points.Select(point => new Coordinate(point.X, point.Y))])
        );
        var toCurve = Enumerable
            .Range(0, 2001)
            .Select(i => run.PointAt(run.Length * i / 2000))
            .Max(point => line.Distance(new NetTopologySuite.Geometries.Point(point.X, point.Y)));
        return (toRun, toCurve);
    }

    /// <summary>Says that the run stays within the accuracy of the curve, both ways.</summary>
    internal static void ShouldFollow(
        this SegmentRun run,
        Func<double, Point> curve,
        double accuracy,
        int places = 20_000
    )
    {
        var (toRun, toCurve) = Measure(run, curve, places);
        toRun.ShouldBeLessThanOrEqualTo(accuracy);
        // A chord lies off its curve by at most an eighth of the second derivative times the squared step, which the second
        // difference measures; twice that leaves room for its change within a step.
        var sag = Enumerable.Range(1, places - 1).Max(Bend) / 4;
        toCurve.ShouldBeLessThanOrEqualTo(accuracy + sag);

        double Bend(int i)
        {
            var (a, b, c) = (At(i - 1), At(i), At(i + 1));
            return double.Hypot(a.X - 2 * b.X + c.X, a.Y - 2 * b.Y + c.Y);
        }

        Point At(int i) => curve((double)i / places);
    }

    /// <summary>The largest angle in radians by which the direction jumps where two segments join.</summary>
    internal static double LargestKink(SegmentRun run)
    {
        var segments = run.Segments.ToArray();
        double largest = 0;
        for (var i = run.IsClosed ? 0 : 1; i < segments.Length; i++)
        {
            var before = segments[(i + segments.Length - 1) % segments.Length];
            var arriving = Heading(before, 1);
            var leaving = Heading(segments[i], 0);
            largest = Math.Max(
                largest,
                Math.Abs(Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving)))
            );
        }
        return largest;
    }

    /// <summary>Half the sweep, 2 atan b, to the right of the chord at the start and to the left of it at the end.</summary>
    private static Vector Heading(Segment segment, int end)
    {
        var half = 2 * Math.Atan(segment.Bulge) * (end == 0 ? -1 : 1);
        var (sin, cos) = Math.SinCos(half);
        var (x, y) = (segment.End.X - segment.Start.X, segment.End.Y - segment.Start.Y);
        return new(x * cos - y * sin, x * sin + y * cos);
    }
}
