namespace PatternGen;

/// <summary>Small raised and lowered figures.</summary>
internal static class SmallFigureGlyphs
{
    private const double Size = 0.64;

    /// <summary>More room on either side, since the pen draws small figures as thick as large ones.</summary>
    private const double Margin = 4;

    /// <summary>Raised signs, each with the character that it repeats.</summary>
    private const string RaisedPairs = "¹1 ²2 ³3 ªa ºo";

    private const string FractionPairs = "½1/2 ⅓1/3 ⅔2/3 ¼1/4 ¾3/4 ⅛1/8 ⅜3/8 ⅝5/8 ⅞7/8";

    /// <summary>Returns the character small, its top as high as capitals.</summary>
    internal static Glyph Raised(Glyph glyph) => Small(glyph, Glyph.CapHeight * (1 - Size));

    /// <summary>Returns the character small, on the baseline.</summary>
    internal static Glyph Lowered(Glyph glyph) => Small(glyph, 0);

    /// <summary>Draws a sign that is made of small figures; null for any other character.</summary>
    internal static Glyph? Draw(char sign)
    {
        foreach (var pair in RaisedPairs.Split(' '))
            if (pair[0] == sign)
                return Raised(Alphabet.Find(pair[1]));
        foreach (var pair in FractionPairs.Split(' '))
            if (pair[0] == sign)
                return FractionGlyphs.Draw(pair[1..]);
        return null;
    }

    private static Glyph Small(Glyph glyph, double baseline) =>
        glyph.Sized(Size, baseline).Widened(Margin, Margin);
}
