using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds fractions like 3/16, and draws them in small figures on either side of a sloping bar.</summary>
internal static class FractionGlyphs
{
    /// <summary>Longer numbers are more likely years than parts of an inch.</summary>
    private const int MostDigits = 3;

    /// <summary>What may touch a fraction on its left, besides white space.</summary>
    private const string Before = "([{\"'‘“‚„«±×÷+−–—=<>≤≥≈Ø";

    /// <summary>What may touch a fraction on its right, besides white space.</summary>
    private const string After = ")]}\"'’”′″»×÷+−–—=<>≤≥≈;:!?°";

    /// <summary>The bar leans over the foot of the last raised figure and under the head of the first lowered one.</summary>
    private const double BarOverlap = 8;

    private static readonly Chain Bar = Chain.Line(new(0, 0), new(38, 100));

    /// <summary>Returns the length of the fraction that stands in a text as a word of its own, or 0.</summary>
    internal static int LengthAt(string text, int start)
    {
        if (start > 0 && !MayTouch(text[start - 1], Before))
            return 0;
        var slash = DigitsEnd(text, start);
        if (slash == start || slash == text.Length || text[slash] != '/')
            return 0;
        var end = DigitsEnd(text, slash + 1);
        var fits = slash - start <= MostDigits && end - slash - 1 is > 0 and <= MostDigits;
        return fits && EndsWord(text, end) ? end - start : 0;
    }

    /// <summary>Draws a fraction that is written with a slash.</summary>
    internal static Glyph Draw(string fraction)
    {
        var width = Bar.End.X;
        var bar = new Glyph([Bar], 0, width, width, width / 2).Widened(-BarOverlap, -BarOverlap);
        Glyph? drawn = null;
        var isRaised = true;
        foreach (var character in fraction)
        {
            var next = bar;
            if (character == '/')
                isRaised = false;
            else if (isRaised)
                next = SmallFigureGlyphs.Raised(Alphabet.Find(character));
            else
                next = SmallFigureGlyphs.Lowered(Alphabet.Find(character));
            drawn = drawn is null ? next : drawn.Then(next);
        }
        return drawn ?? bar;
    }

    private static bool EndsWord(string text, int end)
    {
        if (end == text.Length || MayTouch(text[end], After))
            return true;
        // A full stop or comma ends the word unless it is part of a number.
        return text[end] is '.' or ',' && DigitsEnd(text, end + 1) == end + 1;
    }

    private static bool MayTouch(char neighbour, string signs) =>
        char.IsWhiteSpace(neighbour) || signs.Contains(neighbour);

    private static int DigitsEnd(string text, int start)
    {
        var end = start;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        return end;
    }
}
