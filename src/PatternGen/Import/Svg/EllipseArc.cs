using PatternGen.Geometry;

namespace PatternGen;

/// <summary>An arc of an ellipse in the plane of the drawing.</summary>
/// <param name="Centre">The centre, in mm.</param>
/// <param name="First">From the centre to the end of one axis.</param>
/// <param name="Second">From the centre to the end of the other axis, at a right angle to the first.</param>
/// <param name="From">Where the arc starts: the angle at which the unit circle would be there.</param>
/// <param name="Sweep">By how much that angle grows.</param>
internal readonly record struct EllipseArc(
    Point Centre,
    Vector First,
    Vector Second,
    double From,
    double Sweep
)
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
        var length = Math.Max(1, half.Length);
        var distance = Math.Sqrt(Math.Max(0, (1 - half.Length) * (1 + half.Length)));
        var centre = half.Left * ((isSweeping ? -distance : distance) / half.Length);
        var (from, to) = ((half - centre) / length, (-half - centre) / length);
        var sweep = Math.Abs(Math.Atan2(from.Cross(to), from.Dot(to)));
        var (first, second, turned) = Axes(shape, length);
        var moved = new Vector(
            shape.A * centre.X + shape.C * centre.Y,
            shape.B * centre.X + shape.D * centre.Y
        );
        return new(
            start.Towards(end, 0.5) + moved,
            first,
            second,
            from.Direction.Radians - turned,
            isSweeping ? sweep : -sweep
        );
    }

    internal FreeCurve ToCurve()
    {
        // The second axis may lie to the right of the first one: then angles run the other way.
        var way = First.Cross(Second) > 0 ? 1 : -1;
        return FreeCurve.Ellipse(
            Centre,
            First.Length,
            Second.Length,
            First.Direction,
            Angle.FromRadians(way * From),
            Angle.FromRadians(way * Sweep)
        );
    }

    /// <summary>The axes, and the angle on the unit circle that becomes the first: where the two directions are at right angles.</summary>
    private static (Vector First, Vector Second, double Turned) Axes(Affine shape, double growth)
    {
        var (x, y) = (new Vector(shape.A, shape.B), new Vector(shape.C, shape.D));
        var turned = Math.Atan2(2 * x.Dot(y), x.LengthSquared - y.LengthSquared) / 2;
        var (sin, cos) = Math.SinCos(turned);
        return ((x * cos + y * sin) * growth, (y * cos - x * sin) * growth, turned);
    }
}
