namespace PatternGen;

/// <summary>Breaks text into lines.</summary>
internal static class TextWrap
{
    /// <summary>Returns the text in lines no wider than asked, broken at spaces; a longer word stays whole.</summary>
    /// <param name="text">The text.</param>
    /// <param name="height">Height of the capitals in mm.</param>
    /// <param name="width">Width in mm.</param>
    internal static IEnumerable<string> Lines(string text, double height, double width)
    {
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
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
}
