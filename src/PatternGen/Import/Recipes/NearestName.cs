namespace PatternGen;

/// <summary>Finds the word that someone who mistyped another may have meant.</summary>
internal static class NearestName
{
    /// <summary>Words longer than this are compared by their beginning only, so that a long one costs no time.</summary>
    private const int Longest = 40;

    /// <summary>Says what is known, the nearest first.</summary>
    internal static string Remedy(string word, IReadOnlyCollection<string> known, string label)
    {
        string[] byDistance = [.. known.OrderBy(candidate => Distance(word, candidate))];
        if (byDistance.Length == 0)
            return "no field at all";
        var all = string.Join(", ", byDistance.Select(name => $"\"{name}\""));
        return byDistance.Length == 1 ? $"\"{byDistance[0]}\"" : $"{label}: {all}";
    }

    /// <summary>Number of letters to change, put in or leave out, upper and lower case alike.</summary>
    private static int Distance(string a, string b)
    {
        a = Cut(a);
        b = Cut(b);
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var before = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var changed = before + (a[i - 1] == b[j - 1] ? 0 : 1);
                before = row[j];
                row[j] = Math.Min(changed, 1 + Math.Min(row[j], row[j - 1]));
            }
        }
        return row[b.Length];
    }

    private static string Cut(string word) =>
        (word.Length <= Longest ? word : word[..Longest]).ToLowerInvariant();
}
