namespace PatternGen;

/// <summary>Puts marks on letters.</summary>
internal static class Accents
{
    /// <summary>The least margin of a letter whose mark is wider than itself.</summary>
    private const double LeastMargin = 6;

    /// <summary>Letters by what they are written as where letter and mark come as two characters.</summary>
    private static readonly Dictionary<(char Letter, char Combining), char> Composed = AccentMarks
        .All.SelectMany(
            mark => Pairs(mark),
            (mark, pair) => (mark.Combining, Whole: pair[0], Letter: pair[1])
        )
        .ToDictionary(entry => (entry.Letter, entry.Combining), entry => entry.Whole);

    /// <summary>Returns the accented letter that stands for a letter and the mark that follows it, or null.</summary>
    internal static char? Compose(char letter, char combining) =>
        Composed.TryGetValue((letter, combining), out var whole)
        || Composed.TryGetValue((WithoutDot(letter), combining), out whole)
            ? whole
            : null;

    /// <summary>Adds every accented letter to the plain ones.</summary>
    internal static void AddTo(Dictionary<char, Glyph> glyphs)
    {
        foreach (var mark in AccentMarks.All)
        foreach (var pair in Pairs(mark))
            glyphs.Add(pair[0], Marked(glyphs[pair[1]], mark));
    }

    private static string[] Pairs(AccentMark mark) => mark.Letters.Split(' ');

    private static char WithoutDot(char letter) =>
        letter switch
        {
            'i' => 'ı',
            'j' => 'ȷ',
            _ => letter,
        };

    private static Glyph Marked(Glyph letter, AccentMark mark)
    {
        var top = letter.Extents.Max.Y;
        var (x, y) = mark.Place switch
        {
            MarkPlace.Above => (letter.Axis, top),
            MarkPlace.Below => (letter.Axis, 0),
            MarkPlace.Foot => (letter.Right, 0),
            _ => (letter.Right, top),
        };
        var marked = letter.With(StrokeNotation.Strokes(mark.Strokes), x, y);
        var (left, right) = (marked.Extents.Min.X, marked.Extents.Max.X);
        return marked.Widened(
            Math.Max(0, LeastMargin - left),
            Math.Max(0, right + LeastMargin - marked.Advance)
        );
    }
}
