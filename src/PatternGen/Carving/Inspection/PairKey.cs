using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How two chips lie to each other, rounded so that repeats of both have the same key.</summary>
internal readonly record struct PairKey(
    int Shape,
    int Other,
    bool IsMirrored,
    long Scale,
    long A,
    long B,
    long X,
    long Y
)
{
    /// <summary>
    /// What turns and scales are rounded to: over a metre they move a point by a millionth of a millimetre. Coarser ones
    /// would take chips for repeats that are not; finer ones would miss repeats that went through arithmetic.
    /// </summary>
    private const double Turn = 1e-9;

    /// <summary>What moves are rounded to, in mm.</summary>
    private const double Move = 1e-6;

    /// <param name="first">The first chip.</param>
    /// <param name="second">The second chip.</param>
    /// <param name="scale">Scale of the first one.</param>
    /// <param name="between">From the second one's frame to the first one's.</param>
    internal static PairKey Of(
        in LaidChip first,
        in LaidChip second,
        double scale,
        Transform between
    ) =>
        new(
            first.Shape,
            second.Shape,
            between.IsMirrored,
            Rounded(scale),
            Rounded(between.A, Turn),
            Rounded(between.B, Turn),
            Rounded(between.Translation.X * scale, Move),
            Rounded(between.Translation.Y * scale, Move)
        );

    /// <summary>A scale, the same for all that went through arithmetic.</summary>
    internal static long Rounded(double scale) => Rounded(scale, Turn);

    private static long Rounded(double value, double step) => (long)Math.Round(value / step);
}
