namespace PatternGen;

/// <summary>Tells the size class of a chip.</summary>
internal static class ChipSizes
{
    private const double Medium = 3;
    private const double Large = 6;

    /// <summary>A width that misses a class by rounding, in mm, is of that class.</summary>
    private const double Noise = 1e-9;

    /// <param name="width">Diameter in mm of the largest circle in the chip.</param>
    internal static ChipSize Of(double width) =>
        width >= Large - Noise ? ChipSize.Large
        : width >= Medium - Noise ? ChipSize.Medium
        : ChipSize.Small;
}
