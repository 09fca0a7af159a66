using System.Text;

namespace PatternGen;

/// <summary>Text on its way into a file.</summary>
internal static class OutputText
{
    /// <summary>Returns the text, or refuses what would break a file: control characters and halves of characters.</summary>
    /// <exception cref="PatternException">The text holds such a character.</exception>
    internal static string Checked(string text)
    {
        for (var at = 0; at < text.Length; )
        {
            var isWhole = Rune.TryGetRuneAt(text, at, out var rune);
            if (!isWhole || Rune.IsControl(rune) || rune.Value is 0xFFFE or 0xFFFF)
                throw new PatternException(
                    $"The text \"{Printable(text)}\" holds U+{(int)text[at]:X4}, which no file can hold.",
                    remedies:
                    [
                        "leave that character out",
                        "one label or line for each line of text",
                    ]
                );
            at += rune.Utf16SequenceLength;
        }
        return text;
    }

    private static string Printable(string text) =>
        string.Concat(text.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
}
