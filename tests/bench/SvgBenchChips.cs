using PatternGen.Geometry;

namespace PatternGen.Bench;

/// <summary>The chips that all writers write: numbers with six decimals, as a fitted pitch gives them.</summary>
internal static class SvgBenchChips
{
    internal const int Count = 100_000;
    internal const double Pitch = 8.027473;
    internal const double Left = 6.013187;
    internal const double Low = 12.004321;
    internal const double Height = 4.001234;
    internal const double Bulge = 0.3;

    /// <summary>Distance from the sheet's edges to the chips.</summary>
    internal const double Margin = 1;

    internal static Contour Outline { get; } =
        new([new(0, 0), new(Pitch, 0), new(Pitch / 2, Height, -Bulge)]);

    internal static double Radius { get; } =
        new Segment(new(Pitch / 2, Height), Point.Origin, Bulge).Radius;
}
