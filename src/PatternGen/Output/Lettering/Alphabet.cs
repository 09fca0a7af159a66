using System.Collections.Frozen;

namespace PatternGen;

/// <summary>Every character that has a shape. Read once, when the first is asked for.</summary>
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

    private static readonly string[] Sheets =
    [
        CapitalGlyphs.Sheet,
        SmallLetterGlyphs.Sheet,
        DigitGlyphs.Sheet,
        SignGlyphs.Sheet,
    ];

    /// <summary>The characters and their shapes.</summary>
    internal static readonly FrozenDictionary<char, Glyph> Glyphs = Read();

    private static FrozenDictionary<char, Glyph> Read()
    {
        var glyphs = new Dictionary<char, Glyph>();
        foreach (var space in WordSpaces)
            glyphs.Add(space, Space);
        foreach (var space in ThinSpaces)
            glyphs.Add(space, ThinSpace);
        foreach (var sheet in Sheets)
            GlyphSheet.Read(sheet, glyphs);
        Accents.AddTo(glyphs);
        SmallFigureGlyphs.AddTo(glyphs);
        return glyphs.ToFrozenDictionary();
    }
}
