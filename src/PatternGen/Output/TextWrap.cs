using System.Globalization;

namespace PatternGen;

/// <summary>Breaks text into lines.</summary>
internal static class TextWrap
{
    /// <summary>Returns the text in lines no wider than asked, broken at spaces, and within a word that is longer than a line.</summary>
    /// <param name="text">The text.</param>
    /// <param name="height">Height of the capitals in mm.</param>
    /// <param name="width">Width in mm.</param>
    internal static IEnumerable<string> Lines(string text, double height, double width)
    {
        var line = "";
        foreach (var word in Words(text, height, width))
        {
            var longer = line.Length > 0 ? $"{line} {word}" : word;
            if (line.Length > 0 && Lettering.Width(longer, height) > width)
            {
                yield return line;
                longer = word;
            }
            line = longer;
        }
        if (line.Length > 0)
            yield return line;
    }

    private static IEnumerable<string> Words(string text, double height, double width) =>
        Measures(text.Split(' ', StringSplitOptions.RemoveEmptyEntries), height, width)
            .SelectMany(word => Parts(word, height, width));

    /// <summary>Joins numbers with the units after them, where a line has room for both.</summary>
    private static IEnumerable<string> Measures(string[] words, double height, double width)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if (i + 1 < words.Length && char.IsAsciiDigit(words[i][^1]) && IsUnit(words[i + 1]))
            {
                var measure = $"{words[i]} {words[i + 1]}";
                if (Lettering.Width(measure, height) <= width)
                {
                    yield return measure;
                    i++;
                    continue;
                }
            }
            yield return words[i];
        }
    }

    private static bool IsUnit(string word) =>
        word.TrimEnd('.', ',', ';', ':', ')')
            is "mm"
                or "cm"
                or "m"
                or "mm²"
                or "mm³"
                or "cm³"
                or "%";

    /// <summary>Returns a word in parts no wider than a line, but of a character at least.</summary>
    private static IEnumerable<string> Parts(string word, double height, double width)
    {
        while (word.Length > 0)
        {
            var length = LengthThatFits(word, height, width);
            yield return word[..length];
            word = word[length..];
        }
    }

    /// <summary>Returns how much of the start of a word fits, whole characters as they are read, at least one.</summary>
    private static int LengthThatFits(string word, double height, double width)
    {
        var length = 0;
        do length += StringInfo.GetNextTextElementLength(word, length);
        while (
            length < word.Length
            && Lettering.Width(
                word[..(length + StringInfo.GetNextTextElementLength(word, length))],
                height
            ) <= width
        );
        return length;
    }
}
