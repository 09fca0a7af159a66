using Svg;

namespace PatternGen;

/// <summary>The viewport that an element is in, by which its lengths become user units (pixels of 1/96 inch).</summary>
/// <param name="Width">In user units; what 100 % is of.</param>
/// <param name="Height">In user units.</param>
internal readonly record struct SvgViewport(double Width, double Height)
{
    internal const double PixelsPerInch = 96;
    internal const double MillimetresPerInch = 25.4;

    /// <summary>The usual size of text where a file does not say it; lengths in em are measured by it.</summary>
    private const double Em = 16;

    internal double X(SvgUnit length) => Length(length, Width);

    internal double Y(SvgUnit length) => Length(length, Height);

    /// <summary>A length that is along neither axis, such as a circle's radius.</summary>
    internal double Length(SvgUnit length) =>
        Length(length, Math.Sqrt((Width * Width + Height * Height) / 2));

    /// <summary>A length that does not depend on the viewport.</summary>
    internal static double Absolute(SvgUnit length) => Length(length, whole: 0);

    private static double Length(SvgUnit length, double whole) =>
        length.Value
        * length.Type switch
        {
            SvgUnitType.Percentage => whole / 100,
            SvgUnitType.Millimeter => PixelsPerInch / MillimetresPerInch,
            SvgUnitType.Centimeter => 10 * PixelsPerInch / MillimetresPerInch,
            SvgUnitType.Inch => PixelsPerInch,
            SvgUnitType.Point => PixelsPerInch / 72,
            SvgUnitType.Pica => PixelsPerInch / 6,
            SvgUnitType.Em => Em,
            SvgUnitType.Ex => Em / 2,
            _ => 1,
        };
}
