using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Stands in for the alphabet until it is merged: every character is a box.</summary>
internal static class Lettering
{
    internal const double Ascender = 1.35;
    internal const double Descender = -0.3;

    internal static IReadOnlyList<Chain> Strokes(string text, double height) =>
        [
            .. text.Select((_, i) => 0.7 * height * i)
                .Select(x => Chain.Line(new(x, 0), new(x + height / 2, height))),
        ];

    internal static double Width(string text, double height) => 0.7 * height * text.Length;

    internal static Extents Box(string text, double height) =>
        new(new(0, Descender * height), new(Width(text, height), Ascender * height));
}
