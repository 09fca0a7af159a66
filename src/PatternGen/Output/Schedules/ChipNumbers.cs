using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Sets the numbers of chips into them.</summary>
internal static class ChipNumbers
{
    private const double Highest = 4;

    /// <summary>Share of the circle's diameter that the number's diagonal takes, so that it keeps off the walls' edges.</summary>
    private const double ShareOfCircle = 0.9;

    /// <summary>The number as high as fits in the largest circle in the chip.</summary>
    internal static Label LabelOf(PlannedChip chip) =>
        LabelAt(chip, Math.Min(Highest, HeightIn(chip, ShareOfCircle)));

    internal static Label LabelAt(PlannedChip chip, double height)
    {
        var text = TextOf(chip);
        var half = new Vector(Lettering.Width(text, height), height) / 2;
        return new(text, chip.Middle - half, height);
    }

    /// <summary>Height in mm at which the number's diagonal takes a share of the circle.</summary>
    internal static double HeightIn(PlannedChip chip, double share) =>
        share * chip.Width / double.Hypot(Lettering.Width(TextOf(chip), 1), 1);

    private static string TextOf(PlannedChip chip) =>
        chip.Number.ToString(CultureInfo.InvariantCulture);
}
