using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes text as a pen does, in single strokes of lines and arcs, so that no output needs a font.</summary>
/// <remarks>
/// A line of text starts at x = 0 with its baseline at y = 0; y points up. All sizes follow from the cap height and
/// scale with it. It knows Latin-1, Latin Extended-A, and the quotation marks, dashes, fractions and signs used with
/// measures; anything else draws an empty box. Fractions like 3/16 that stand alone or after a whole number are set
/// small. A line break is a space: callers write line by line. Safe to call from many threads.
/// </remarks>
internal static class Lettering
{
    /// <summary>Height of the highest accent over the baseline, as a share of the cap height.</summary>
    internal const double Ascender = 1.4;

    /// <summary>Height of the lowest stroke over the baseline, as a share of the cap height.</summary>
    internal const double Descender = -0.3;

    /// <summary>Returns the strokes of a line of text, in writing order.</summary>
    /// <param name="text">The line; may be empty.</param>
    /// <param name="height">Height of the capitals in mm.</param>
    internal static IReadOnlyList<Chain> Strokes(string text, double height)
    {
        Guard.NotNull(text);
        Guard.Positive(height);
        var strokes = new List<Chain>();
        foreach (var (glyph, x) in Typesetter.Set(text))
        foreach (var stroke in glyph.Strokes)
            strokes.Add(Scaled(stroke, x, height));
        return strokes;
    }

    /// <summary>Returns the width of a line of text in mm, with the margins of its first and last character.</summary>
    /// <param name="text">The line; may be empty.</param>
    /// <param name="height">Height of the capitals in mm.</param>
    internal static double Width(string text, double height)
    {
        Guard.NotNull(text);
        Guard.Positive(height);
        double end = 0;
        foreach (var placed in Typesetter.Set(text))
            end = placed.End;
        return end / Glyph.CapHeight * height;
    }

    /// <summary>
    /// Returns the room that a line of text takes up: its width, from the lowest to the highest stroke of any text.
    /// </summary>
    /// <param name="text">The line; may be empty.</param>
    /// <param name="height">Height of the capitals in mm.</param>
    internal static Extents Box(string text, double height) =>
        new(new(0, Descender * height), new(Width(text, height), Ascender * height));

    private static Chain Scaled(Chain stroke, double x, double height)
    {
        var corners = new Vertex[stroke.Vertices.Count];
        for (var i = 0; i < corners.Length; i++)
            corners[i] = Scaled(stroke.Vertices[i], x, height);
        return new(corners);
    }

    private static Vertex Scaled(Vertex vertex, double x, double height) =>
        new(
            (x + vertex.Point.X) / Glyph.CapHeight * height,
            vertex.Point.Y / Glyph.CapHeight * height,
            vertex.Bulge
        );
}
