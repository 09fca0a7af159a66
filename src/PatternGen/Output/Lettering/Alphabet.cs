namespace PatternGen;

/// <summary>Every character that has a shape. A shape is read when it is first asked for: most texts need few of them.</summary>
internal static class Alphabet
{
    /// <summary>What stands for a character that has no shape: an empty box.</summary>
    internal static readonly Glyph Unknown = GlyphSheet.Drawn("14 14  0,0 0,68 40,68 40,0 0,0");

    /// <summary>What stands between a whole number and its fraction.</summary>
    internal static readonly Glyph ThinSpace = Glyph.Blank(14);

    private static readonly Glyph Space = Glyph.Blank(34);

    /// <summary>Characters that are drawn as a space; the last one does not break lines.</summary>
    private const string WordSpaces = " \t\r\n\u00A0";

    /// <summary>Thin space and its kind that does not break lines.</summary>
    private const string ThinSpaces = "\u2009\u202F";

    /// <summary>No character beyond this one has a shape.</summary>
    private const char Last = '≥';

    private static readonly Glyph?[] Drawn = new Glyph?[Last + 1];

    /// <summary>Returns the shape of a character; the empty box if it has none.</summary>
    internal static Glyph Find(char character)
    {
        if (character > Last)
            return Unknown;
        // Two threads may draw the same character at once, to the same end.
        return Drawn[character] ??= Draw(character);
    }

    private static Glyph Draw(char character)
    {
        if (WordSpaces.Contains(character))
            return Space;
        if (ThinSpaces.Contains(character))
            return ThinSpace;
        return GlyphSheet.Draw(character)
            ?? Accents.Draw(character)
            ?? SmallFigureGlyphs.Draw(character)
            ?? Unknown;
    }
}
