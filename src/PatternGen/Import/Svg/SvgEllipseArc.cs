using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds the arcs of ellipses that path data gives by their ends.</summary>
internal static class SvgEllipseArc
{
    /// <summary>An axis shorter than this, in mm, leaves a line.</summary>
    private const double Flat = 1e-9;

    /// <summary>Returns the arc of at most a half turn between two places; null if it is flat, or its ends are the same.</summary>
    /// <param name="shape">What makes the ellipse of the unit circle; where it moves to is no matter.</param>
    /// <param name="start">Where the arc starts.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="isSweeping">Whether it runs round the unit circle from x to y.</param>
    internal static EllipseArc? Under(Affine shape, Point start, Point end, bool isSweeping)
    {
        if (start == end || shape.Sizes.Smaller < Flat)
            return null;
        // Half the chord, as it would be on the unit circle.
        var chord = (start - end) / 2;
        var half = new Vector(
            (shape.D * chord.X - shape.C * chord.Y) / shape.Determinant,
            (shape.A * chord.Y - shape.B * chord.X) / shape.Determinant
        );
        // Rounding may have left the radii a little short; the centre is then the middle.
        var growth = Math.Max(1, half.Length);
        var distance = Math.Sqrt(Math.Max(0, (1 - half.Length) * (1 + half.Length)));
        var centre = half.Left * ((isSweeping ? -distance : distance) / half.Length);
        var (from, to) = (half - centre, -half - centre);
        var sweep = Math.Abs(Math.Atan2(from.Cross(to), from.Dot(to)));
        var (u, v) = (new Vector(shape.A, shape.B), new Vector(shape.C, shape.D));
        return new(
            start.Towards(end, 0.5) + u * centre.X + v * centre.Y,
            u * growth,
            v * growth,
            from.Direction.Radians,
            isSweeping ? sweep : -sweep
        );
    }

    internal static FreeCurve ToCurve(this EllipseArc arc)
    {
        var (centre, first, second, from, sweep) = arc.OnAxes();
        return FreeCurve.Ellipse(
            centre,
            first.Length,
            second.Length,
            first.Direction,
            Angle.FromRadians(from),
            Angle.FromRadians(sweep)
        );
    }
}
