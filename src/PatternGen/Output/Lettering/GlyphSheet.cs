using System.Globalization;

namespace PatternGen;

/// <summary>Reads sheets of characters, one a line.</summary>
/// <remarks>
/// A line holds the character, its left and right margin, and its strokes as in <see cref="StrokeNotation"/>. The
/// character stands between the margins from x = 0 to the largest x written, so curves have written points at their
/// extremes. <c>^x</c> after the margins says over which x accents are centred, where that is not the middle.
/// Margins are hundredths of the cap height.
/// <code>
/// T  5  5  0,100 62,100 | 31,100 31,0
/// l 15  8  ^0  0,104 0,15 ~ 15,0e
/// Ø =O  5,-7 73,107      the strokes and margins of an earlier character, and one stroke more
/// </code>
/// </remarks>
internal static class GlyphSheet
{
    /// <summary>Adds the characters of a sheet to those read before it.</summary>
    internal static void Read(string sheet, Dictionary<char, Glyph> glyphs)
    {
        foreach (var line in sheet.Split('\n'))
        {
            var words = Words(line[1..]);
            var glyph = words[0].StartsWith('=')
                ? Changed(glyphs[words[0][1]], words)
                : Drawn(words);
            glyphs.Add(line[0], glyph);
        }
    }

    /// <summary>Reads a line without its character.</summary>
    internal static Glyph Drawn(string line) => Drawn(Words(line));

    private static Glyph Changed(Glyph letter, string[] words) =>
        letter.With(StrokeNotation.Strokes(Rest(words, 1)), letter.Left, 0);

    private static Glyph Drawn(string[] words)
    {
        var (left, right) = (Number(words[0]), Number(words[1]));
        var hasAxis = words[2].StartsWith('^');
        var notation = Rest(words, hasAxis ? 3 : 2);
        var width = StrokeNotation.Width(notation);
        var axis = hasAxis ? Number(words[2][1..]) : width / 2;
        return new Glyph([.. StrokeNotation.Strokes(notation)], 0, width, width, axis).Widened(
            left,
            right
        );
    }

    private static string[] Words(string line) =>
        line.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string Rest(string[] words, int start) => string.Join(' ', words[start..]);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
