namespace PatternGen;

/// <summary>Puts marks on letters.</summary>
internal static class Accents
{
    /// <summary>The least margin of a letter whose mark is wider than itself.</summary>
    private const double LeastMargin = 6;

    /// <summary>Letters of a mark stand in pairs, "ÄA ËE": the whole, what carries the mark, a space.</summary>
    private const int PairLength = 3;

    /// <summary>Returns the accented letter that stands for a letter and the mark that follows it, or null.</summary>
    internal static char? Compose(char letter, char combining)
    {
        foreach (var mark in AccentMarks.All)
            if (mark.Combining == combining && Whole(mark, letter) is { } whole)
                return whole;
        return null;
    }

    /// <summary>Draws a letter with its mark; null for any other character.</summary>
    internal static Glyph? Draw(char whole)
    {
        foreach (var mark in AccentMarks.All)
            for (var i = 0; i < mark.Letters.Length; i += PairLength)
                if (mark.Letters[i] == whole)
                    return Marked(Alphabet.Find(mark.Letters[i + 1]), mark);
        return null;
    }

    private static char? Whole(AccentMark mark, char letter)
    {
        for (var i = 0; i < mark.Letters.Length; i += PairLength)
            if (mark.Letters[i + 1] == letter || mark.Letters[i + 1] == WithoutDot(letter))
                return mark.Letters[i];
        return null;
    }

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
