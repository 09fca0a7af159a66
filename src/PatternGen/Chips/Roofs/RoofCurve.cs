namespace PatternGen;

/// <summary>
/// A polynomial q0 + q1 s + q2 s² along a site: how far from it another site lets a disc grow. Of two sites the one with
/// the lower value stops the disc first.
/// </summary>
/// <param name="Q0">The value at 0.</param>
/// <param name="Q1">The factor of s.</param>
/// <param name="Q2">The factor of s².</param>
/// <param name="Gain">By how much the value of a side grows where the foot moves 1 mm away from the other side, over the weight there.</param>
internal readonly record struct RoofCurve(double Q0, double Q1, double Q2, double Gain = 0)
{
    /// <summary>A few units in the last place of a sum of three terms that themselves are rounded.</summary>
    private const double Digits = 4e-15;

    internal double At(double s) => Q0 + s * (Q1 + s * Q2);

    /// <summary>What rounding may have added to the value.</summary>
    internal double RoundingAt(double s) =>
        Digits * (Math.Abs(Q0) + Math.Abs(s) * (Math.Abs(Q1) + Math.Abs(s * Q2)));

    public static RoofCurve operator *(RoofCurve a, double factor) =>
        new(a.Q0 * factor, a.Q1 * factor, a.Q2 * factor, a.Gain * factor);

    public static RoofCurve operator +(RoofCurve a, RoofCurve b) =>
        new(a.Q0 + b.Q0, a.Q1 + b.Q1, a.Q2 + b.Q2);

    public static RoofCurve operator -(RoofCurve a, RoofCurve b) =>
        new(a.Q0 - b.Q0, a.Q1 - b.Q1, a.Q2 - b.Q2);

    /// <summary>Where the value is 0: none, one or two places, NaN for those that are missing.</summary>
    internal (double First, double Second) Roots()
    {
        if (Q2 == 0)
            return (Q1 != 0 ? -Q0 / Q1 : double.NaN, double.NaN);
        var root = Math.Sqrt(Q1 * Q1 - 4 * Q2 * Q0);
        // The sum that doesn't cancel; the other root follows from the product of both.
        var sum = -0.5 * (Q1 + (Q1 < 0 ? -root : root));
        return (sum / Q2, sum != 0 ? Q0 / sum : double.NaN);
    }
}
