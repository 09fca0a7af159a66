using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The shape of a petal between two circles: two equal arcs from tip to tip.</summary>
internal readonly record struct RingPetal(double ArcRadius)
{
    /// <exception cref="PatternException">The ridge leaves no room for petals.</exception>
    internal static RingPetal Of(int count, double radius, double inner, double ridge)
    {
        var half = Math.PI / count;
        var room = 2 * inner * Math.Sin(half);
        if (!RosetteSizes.IsBelow(ridge, room))
            throw new PatternException(
                $"Between {count} petals a ridge of {Guard.Text(ridge)} mm does not fit on a circle of {Guard.Text(inner)} mm radius, where tips are {Guard.Text(room)} mm apart.",
                new(0, inner),
                [
                    $"a ridge of less than {Guard.Text(room)} mm",
                    $"an inner radius of more than {Guard.Text(ridge / (2 * Math.Sin(half)))} mm",
                    "fewer petals",
                ]
            );
        var length = radius - inner;
        // An arc has 60° where its radius is its chord, and then so have the tips.
        return new(Math.Max(length, Widest(half, (radius + inner) / 2, length / 2, ridge)));
    }

    /// <summary>The radius of the arcs of the widest petal that keeps clear of the line half-way to the next one.</summary>
    /// <remarks>
    /// With the middle of the petal m from the centre, half its length k, half the angle between petals θ and half the
    /// ridge g: the needle stands h beside the petal's middle line, ρ² = h² + k², and its circle comes as near as g to the
    /// line, m sin θ + h cos θ = ρ + g. That is a quadratic equation in h, whose smaller root counts.
    /// </remarks>
    private static double Widest(double half, double middle, double halfLength, double ridge)
    {
        var (sin, cos) = Math.SinCos(half);
        var room = middle * sin - ridge / 2;
        // Positive, since the ridge is less than the tips are apart; 0 only where rounding makes it so.
        var root = Math.Sqrt(Math.Max(0, room * room - sin * sin * halfLength * halfLength));
        var beside = (room * cos - root) / (sin * sin);
        // From the petal's own side the needle would draw more than half circles.
        return double.Hypot(Math.Max(0, beside), halfLength);
    }
}
