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
    private static readonly string[] Sheets =
    [
        CapitalGlyphs.Sheet,
        SmallLetterGlyphs.Sheet,
        DigitGlyphs.Sheet,
        SignGlyphs.Sheet,
    ];

    /// <summary>Draws a character that a sheet has a line for; null for any other.</summary>
    internal static Glyph? Draw(char character)
    {
        if (LineOf(character) is not { } line)
            return null;
        var words = Words(line[1..]);
        return words[0].StartsWith('=') ? Changed(Alphabet.Find(words[0][1]), words) : Drawn(words);
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

    private static string? LineOf(char character)
    {
        foreach (var sheet in Sheets)
        {
            var start =
                sheet[0] == character
                    ? 0
                    : sheet.IndexOf($"\n{character}", StringComparison.Ordinal) + 1;
            if (start == 0 && sheet[0] != character)
                continue;
            var end = sheet.IndexOf('\n', start);
            return end < 0 ? sheet[start..] : sheet[start..end];
        }
        return null;
    }

    private static string[] Words(string line) =>
        line.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string Rest(string[] words, int start) => string.Join(' ', words[start..]);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
