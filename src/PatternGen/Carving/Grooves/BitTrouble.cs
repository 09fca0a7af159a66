using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Why a bit can't cut something, as the end of a sentence, and what would work.</summary>
/// <param name="Reason">The end of the sentence.</param>
/// <param name="Remedy">What would work.</param>
/// <param name="Width">How wide in mm what is too wide is; 0 for other troubles.</param>
internal sealed record BitTrouble(string Reason, string Remedy, double Width = 0)
{
    /// <summary>Share by which a clearance may be above the bit's: rounding.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Angles that agree to this many radians are the same.</summary>
    private const double SameAngle = 1e-9;

    /// <summary>Steps in mm that bits are asked for in.</summary>
    private const double Step = 0.1;

    /// <summary>Returns what is wrong with a chip, or null.</summary>
    internal static BitTrouble? Of(ChipShape shape, double scale, VBit bit)
    {
        if (shape.Cut.IsStabbed)
            return new(
                "is stab-cut, with upright walls that no V bit leaves",
                "leaving walls all round for stab-cut chips, or carving those by hand"
            );
        if (shape.Cut.WallAngle is { } own && !IsSame(own, bit.WallAngle))
            return new(
                $"has walls of {Degrees(own)} of its own, and the bit leaves {Degrees(bit.WallAngle)}",
                $"a bit of {Degrees(Angle.FromDegrees(180) - own * 2)} included for the walls of {Degrees(own)}"
            );
        return Wide(2 * shape.Roof.Clearance * scale, bit, "across its deepest point");
    }

    /// <summary>Returns what is wrong with a line cut, or null.</summary>
    internal static BitTrouble? Of(LineCut cut, VBit bit) => Wide(cut.Width, bit, "across");

    /// <summary>
    /// Where the cone is at its full diameter at the surface, it is as deep as it reaches: wider and deeper is one and the same.
    /// </summary>
    private static BitTrouble? Wide(double width, VBit bit, string where)
    {
        if (width <= bit.Diameter * (1 + Rounding))
            return null;
        var needed = Math.Ceiling(width / Step * (1 - Rounding)) * Step;
        var share = Math.Floor(100 * bit.Diameter / width);
        var depth = width / 2 * Math.Tan(bit.WallAngle.Radians);
        return new(
            $"is {Text(width)} mm {where} and would be {Text(depth)} mm deep, but the bit is {Text(bit.Diameter)} mm and cuts {Text(bit.Reach)} mm deep",
            $"a bit of at least {Text(needed)} mm, or chips of at most {Text(share)} % of the size",
            width
        );
    }

    private static bool IsSame(Angle a, Angle b) => Math.Abs((a - b).Radians) <= SameAngle;

    private static string Degrees(Angle angle) => $"{Guard.Text(Math.Round(angle.Degrees, 3))}°";

    private static string Text(double value) => Guard.Text(Math.Round(value, 3));
}
