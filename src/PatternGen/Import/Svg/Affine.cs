using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A map of the plane as SVG writes it: x' = A x + C y + E, y' = B x + D y + F. It may stretch, which shapes of the library can't.</summary>
internal readonly record struct Affine(double A, double B, double C, double D, double E, double F)
{
    internal static Affine Identity { get; } = new(1, 0, 0, 1, 0, 0);

    /// <summary>Positive if the map keeps the turning sense, negative if it mirrors, 0 if it flattens.</summary>
    internal double Determinant => A * D - B * C;

    /// <summary>By how much the map lengthens at most.</summary>
    internal double Stretch => Sizes.Larger;

    /// <summary>The half axes of the ellipse that the unit circle becomes: the singular values.</summary>
    internal (double Larger, double Smaller) Sizes
    {
        get
        {
            // Half the sum and half the difference of the singular values, each without cancellation.
            var sum = double.Hypot(A + D, B - C) / 2;
            var difference = double.Hypot(A - D, B + C) / 2;
            return (sum + difference, Math.Abs(sum - difference));
        }
    }

    internal static Affine Move(double x, double y) => new(1, 0, 0, 1, x, y);

    internal static Affine Scale(double x, double y) => new(x, 0, 0, y, 0, 0);

    internal static Affine Turn(double degrees)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(Math.IEEERemainder(degrees, 360)));
        return new(cos, sin, -sin, cos, 0, 0);
    }

    /// <summary>First the right map, then the left one.</summary>
    public static Affine operator *(Affine outer, Affine inner) =>
        new(
            outer.A * inner.A + outer.C * inner.B,
            outer.B * inner.A + outer.D * inner.B,
            outer.A * inner.C + outer.C * inner.D,
            outer.B * inner.C + outer.D * inner.D,
            outer.A * inner.E + outer.C * inner.F + outer.E,
            outer.B * inner.E + outer.D * inner.F + outer.F
        );

    internal Point Apply(Point point) =>
        new(A * point.X + C * point.Y + E, B * point.X + D * point.Y + F);
}
