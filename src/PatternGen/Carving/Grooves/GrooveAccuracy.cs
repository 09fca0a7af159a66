namespace PatternGen;

/// <summary>How far straight pieces of a path may be from the valley.</summary>
/// <remarks>
/// <para>
/// Let d(p) be the distance of a point from the outline. A cone whose point stands at q, and that cuts a circle of radius
/// r at the surface, cuts p down to (r - |p - q|) tan α, where the chip is d(p) tan α deep. A piece of a path has the points
/// q(t) and the radii r(t), both linear, and the valley the points v(u) and the clearances c(u) = d(v(u)). Let e be the distance
/// between q(t) and the v(u) that is put beside it, and h = r(t) - c(u).
/// </para>
/// <para>
/// Never too deep: d changes by no more than one walks, so d(q) ≥ c - e = r - (e + h), and lifted by max(e + h) the cone stays
/// within the circle about q that is free of the outline; then r - |p - q| ≤ d(q) - |p - q| ≤ d(p) for all p. In a convex chip
/// d is concave, so that a piece between two points of the valley needs no lift at all.
/// </para>
/// <para>
/// Nothing left standing: below p the wall goes down to a v(u), and d(p) = c - |p - v|. The cone at q cuts p down to r - lift - |p - q| ≥ c + h -
/// lift - |p - v| - e = d(p) - (e - h) - lift, so what stays is no higher than (max(e - h) + lift) tan α.
/// </para>
/// <para>
/// Points of a valley (x, y, c) are common to two planes or cones of the same slope, and the difference of two such equations is linear: each valley
/// is a conic in a plane. The distance between it and its chord is therefore a single hump, in one fixed direction: e and h have
/// their largest values at one place, whatever direction is chosen, and it can be found by narrowing down.
/// </para>
/// </remarks>
/// <param name="clearance">How much may be left standing, as clearance: the depth over tan α.</param>
/// <param name="isConvex">Whether the chip is.</param>
internal readonly struct GrooveAccuracy(double clearance, bool isConvex)
{
    /// <summary>Lifts less than this are rounding, in mm.</summary>
    private const double Rounding = 1e-10;

    /// <summary>What narrowing down may miss of a largest value, as a factor.</summary>
    private const double Safety = 1.001;

    /// <summary>Steps of narrowing down; each leaves 0.618 of the room. A hump as flat as a parabola's is then met to 1e-4.</summary>
    private const int Steps = 12;

    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>Whether a piece is so short that what stays below it is little enough, wherever the valley lies.</summary>
    internal bool IsShort(double length) => length <= clearance / 2;

    /// <summary>By how much a short piece must be lifted to be nowhere too deep: the distance changes by no more than one walks.</summary>
    internal double RiseOverShort(double length) => isConvex ? 0 : length / 2;

    /// <summary>Returns by how much a straight piece must be lifted, and how many times too far it is from the valley: up to 1 it will do.</summary>
    /// <param name="from">Where the piece starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="valley">The valley by share.</param>
    /// <param name="shares">The shares of both ends.</param>
    /// <param name="beside">How far, in mm, the ends are from those of the valley.</param>
    internal (double Rise, double Excess) Of(
        ValleyPlace from,
        ValleyPlace to,
        Func<double, ValleyPlace> valley,
        (double From, double To) shares,
        double beside
    )
    {
        var (aside, above) = Hump(from, to, valley, shares);
        var standing = Math.Max(0, aside - above) * Safety + beside;
        if (isConvex)
            return (0, standing / clearance);
        var rise = Math.Max(0, aside + above) * Safety + beside;
        if (rise <= Rounding)
            return (0, standing / clearance);
        return (rise, Math.Max(rise, standing) / (clearance / 2));
    }

    private static (double Aside, double Above) Hump(
        ValleyPlace from,
        ValleyPlace to,
        Func<double, ValleyPlace> valley,
        (double From, double To) shares
    )
    {
        var (low, high) = shares;
        var first = Gap(high - Golden * (high - low));
        var second = Gap(low + Golden * (high - low));
        for (var step = 0; step < Steps; step++)
            if (Size(first) < Size(second))
            {
                low = high - Golden * (high - low);
                first = second;
                second = Gap(low + Golden * (high - low));
            }
            else
            {
                high = low + Golden * (high - low);
                second = first;
                first = Gap(high - Golden * (high - low));
            }
        return Size(first) > Size(second) ? first : second;

        (double Aside, double Above) Gap(double share)
        {
            var place = valley(share);
            var chord = to.Point - from.Point;
            var t = Math.Clamp((place.Point - from.Point).Dot(chord) / chord.LengthSquared, 0, 1);
            var radius = from.Clearance + (to.Clearance - from.Clearance) * t;
            return (
                place.Point.DistanceTo(from.Point.Towards(to.Point, t)),
                radius - place.Clearance
            );
        }

        static double Size((double Aside, double Above) gap) => gap.Aside + Math.Abs(gap.Above);
    }
}
