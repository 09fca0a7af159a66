using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Where a block's own coordinates go: x' = A x + C y + E, y' = B x + D y + F. Unlike a similarity it may stretch.</summary>
internal readonly record struct DxfMap(double A, double B, double C, double D, double E, double F)
{
    /// <summary>
    /// How much, in shares, the axes may differ for a circle to count as one: what merges. More would draw a stretched circle
    /// wrong by more than the rounding of the kernel; less would make ellipses of circles that were only turned.
    /// </summary>
    private const double Even = 1e-9;

    internal static DxfMap Scaled(double factor) => new(factor, 0, 0, factor, 0, 0);

    internal static DxfMap Moved(double x, double y) => new(1, 0, 0, 1, x, y);

    internal static DxfMap MirroredX { get; } = new(-1, 0, 0, 1, 0, 0);

    /// <summary>Above 0 where it keeps the sense of turning, below where it mirrors; 0 where it flattens.</summary>
    internal double Determinant => A * D - B * C;

    internal bool KeepsCircles
    {
        get
        {
            var (first, second, skew) = (A * A + B * B, C * C + D * D, A * C + B * D);
            return Math.Abs(first - second) <= Even * first && Math.Abs(skew) <= Even * first;
        }
    }

    /// <summary>
    /// This map in two: what changes the shape of a curve, which is only its size where circles stay circles, and after that
    /// what moves, turns or mirrors it.
    /// </summary>
    internal (DxfMap Shape, DxfMap Placing) Parted()
    {
        if (!KeepsCircles)
            return (this with { E = 0, F = 0 }, Moved(E, F));
        var size = Math.Sqrt(Math.Abs(Determinant));
        return (Scaled(size), new(A / size, B / size, C / size, D / size, E, F));
    }

    /// <summary>Whether two maps take a curve to the same but for what counts as even; turns round off differently.</summary>
    internal bool IsNear(DxfMap other)
    {
        var within = Even * Math.Sqrt(Math.Abs(Determinant));
        return Math.Abs(A - other.A) <= within
            && Math.Abs(B - other.B) <= within
            && Math.Abs(C - other.C) <= within
            && Math.Abs(D - other.D) <= within;
    }

    /// <summary>This map first, then the other.</summary>
    internal DxfMap Then(DxfMap next) =>
        new(
            next.A * A + next.C * B,
            next.B * A + next.D * B,
            next.A * C + next.C * D,
            next.B * C + next.D * D,
            next.A * E + next.C * F + next.E,
            next.B * E + next.D * F + next.F
        );

    internal Point Apply(Point point) =>
        new(A * point.X + C * point.Y + E, B * point.X + D * point.Y + F);

    internal Vector Apply(Vector vector) =>
        new(A * vector.X + C * vector.Y, B * vector.X + D * vector.Y);
}
