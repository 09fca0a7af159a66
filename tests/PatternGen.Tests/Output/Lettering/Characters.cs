using System.Text;

namespace PatternGen.Tests.Output;

/// <summary>The characters that lettering promises.</summary>
internal static class Characters
{
    internal static readonly string Ascii = Range('!', '~');

    internal static readonly string Digits = Range('0', '9');

    // Without the soft hyphen, which is not printed.
    internal static readonly string Latin1 = Range('\u00A1', '\u00AC') + Range('\u00AE', '\u00FF');

    internal static readonly string LatinExtendedA = Range('\u0100', '\u017F');

    internal const string Others = "ȘșȚț–—‘’‚“”„…‹›€−≤≥≈′″⅓⅔⅛⅜⅝⅞";

    internal static readonly string All = Ascii + Latin1 + LatinExtendedA + Others;

    private static string Range(char first, char last)
    {
        var text = new StringBuilder();
        for (var character = first; character <= last; character++)
            text.Append(character);
        return text.ToString();
    }
}
