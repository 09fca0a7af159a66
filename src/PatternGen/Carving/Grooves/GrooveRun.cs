using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A path in a chip's own frame, which all repeats of the chip share.</summary>
internal sealed class GrooveRun
{
    private readonly (Point Point, double Clearance)[] _corners;

    private GrooveRun(GrooveEntry entry, (Point Point, double Clearance)[] corners)
    {
        Entry = entry;
        _corners = corners;
        Deepest = corners.Max(corner => corner.Clearance);
    }

    internal GrooveEntry Entry { get; }

    internal int Count => _corners.Length;

    /// <summary>The greatest clearance.</summary>
    internal double Deepest { get; }

    internal Point End => _corners[^1].Point;

    /// <summary>Returns the path with each corner lifted as much as both its neighbours ask for, and kept at the surface where it would leave the wood.</summary>
    internal static GrooveRun Of(GrooveEntry entry, List<GrooveKnot> knots)
    {
        var corners = new List<(Point Point, double Clearance)>(knots.Count);
        double lifted = 0;
        for (var i = 0; i < knots.Count; i++)
        {
            var before = lifted;
            lifted = knots[i].Clearance - Lift(knots, i);
            if (i > 0 && before * lifted < 0)
                corners.Add((Crossing(knots[i - 1].Point, before, knots[i].Point, lifted), 0));
            corners.Add((knots[i].Point, Math.Max(0, lifted)));
        }
        return new(entry, [.. corners]);
    }

    /// <summary>Returns the path where a chip is placed.</summary>
    /// <param name="placement">How it is placed.</param>
    /// <param name="slope">Depth over clearance.</param>
    internal GroovePlace[] Placed(Transform placement, double slope)
    {
        var deepening = placement.Scale * slope;
        return Array.ConvertAll(
            _corners,
            corner => new GroovePlace(placement.Apply(corner.Point), corner.Clearance * deepening)
        );
    }

    private static double Lift(List<GrooveKnot> knots, int at) =>
        Math.Max(at > 0 ? knots[at - 1].Rise : 0, at < knots.Count - 1 ? knots[at].Rise : 0);

    /// <summary>Where a line that starts above the surface goes under it, or the other way round.</summary>
    private static Point Crossing(Point from, double before, Point to, double after) =>
        from.Towards(to, before / (before - after));
}
