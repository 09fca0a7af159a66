namespace PatternGen;

/// <summary>A character and where it stands, in the units of its glyph.</summary>
internal readonly record struct PlacedGlyph(Glyph Glyph, double X)
{
    /// <summary>Where the next character stands, unless the two are kerned.</summary>
    internal double End => X + Glyph.Advance;
}

/// <summary>Sets a line of text from left to right.</summary>
internal static class Typesetter
{
    private const char NoCharacter = '\0';

    internal static IEnumerable<PlacedGlyph> Set(string text)
    {
        var pen = 0.0;
        var before = NoCharacter;
        for (var at = 0; at < text.Length; )
        {
            var (glyph, character, length) = Next(text, at);
            var placed = new PlacedGlyph(glyph, pen - Kerning.Between(before, character));
            yield return placed;
            (pen, before) = (placed.End, character);
            at += length;
        }
    }

    /// <summary>What stands next in the text, the character that it kerns as, and how much of the text it takes.</summary>
    private static (Glyph Glyph, char Character, int Length) Next(string text, int at)
    {
        if (FractionGlyphs.LengthAt(text, at) is > 0 and var length)
            return (FractionGlyphs.Draw(text.Substring(at, length)), NoCharacter, length);
        if (IsGapOfMixedNumber(text, at))
            return (Alphabet.ThinSpace, NoCharacter, 1);
        if (char.IsSurrogatePair(text, at))
            return (Alphabet.Unknown, NoCharacter, 2);
        var (character, taken) =
            at + 1 < text.Length && Accents.Compose(text[at], text[at + 1]) is { } whole
                ? (whole, 2)
                : (text[at], 1);
        return (Alphabet.Find(character), character, taken);
    }

    /// <summary>Whether this is the space of 29 3/16.</summary>
    private static bool IsGapOfMixedNumber(string text, int at) =>
        text[at] == ' '
        && at > 0
        && char.IsAsciiDigit(text[at - 1])
        && FractionGlyphs.LengthAt(text, at + 1) > 0;
}
