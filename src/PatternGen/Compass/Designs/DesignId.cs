using System.Globalization;
using System.Text;

namespace PatternGen;

/// <summary>Writes a choice of parts as a short text and reads it again.</summary>
/// <remarks>
/// <c>f</c> for the full symmetry of the figure or <c>t</c> and a number of turns, whichever is the most that takes the
/// choice to itself; then the numbers of its orbits under that, each after a hyphen but the first after <c>f</c>, three or
/// more in a row as <c>4to7</c>. Small letters, digits and hyphens are safe in the names of files.
/// </remarks>
internal static class DesignId
{
    private const string To = "to";

    internal static string Of(DrawingFigure figure, IEnumerable<int> parts)
    {
        var chosen = new bool[figure.Parts.Count];
        foreach (var part in parts)
            chosen[part] = true;
        var (turns, withMirrors) = SymmetryOf(figure, chosen);
        var orbits = DesignBoard.OrbitsUnder(figure, turns, withMirrors);
        var text = new StringBuilder(
            withMirrors ? "f" : string.Create(CultureInfo.InvariantCulture, $"t{turns}-")
        );
        text.AppendJoin('-', Runs([.. Numbers(orbits, chosen)]));
        return text.ToString();
    }

    /// <summary>The parts, counted from 0; null if no choice of this figure has the id.</summary>
    internal static IReadOnlySet<int>? Parse(DrawingFigure figure, string id)
    {
        if (id.Length == 0)
            return null;
        var words = id[1..].Split('-');
        var isFull = id[0] == 'f';
        var turns = figure.Symmetry.Order;
        if (!isFull && (id[0] != 't' || !TryNumber(words[0], out turns)))
            return null;
        if (figure.Symmetry.Order % turns != 0)
            return null;
        var orbits = DesignBoard.OrbitsUnder(figure, turns, isFull);
        var parts = new HashSet<int>();
        foreach (var word in words.Skip(isFull ? 0 : 1))
        {
            if (!TryRun(word, out var from, out var to) || from < 1 || to > orbits.Length)
                return null;
            for (var orbit = from; orbit <= to; orbit++)
                parts.UnionWith(orbits[orbit - 1]);
        }
        return parts.Count > 0 ? parts : null;
    }

    /// <summary>The most symmetry that takes a choice to itself; that of a figure without mirrors is full if all turns do.</summary>
    private static (int Turns, bool WithMirrors) SymmetryOf(DrawingFigure figure, bool[] chosen)
    {
        var order = figure.Symmetry.Order;
        var turns = Symmetry
            .DivisorsOf(order)
            .First(m => IsKept(figure.Group.Turn(order / m), chosen));
        var isFull =
            turns == order && (figure.Group.Mirror is not { } mirror || IsKept(mirror, chosen));
        return (turns, isFull);
    }

    private static bool IsKept(int[] taken, bool[] chosen)
    {
        for (var part = 0; part < taken.Length; part++)
            if (chosen[part] != chosen[taken[part]])
                return false;
        return true;
    }

    private static IEnumerable<int> Numbers(int[][] orbits, bool[] chosen)
    {
        for (var orbit = 0; orbit < orbits.Length; orbit++)
            if (chosen[orbits[orbit][0]])
                yield return orbit + 1;
    }

    private static IEnumerable<string> Runs(int[] numbers)
    {
        const int shortest = 3;
        for (var i = 0; i < numbers.Length; )
        {
            var length = 1;
            while (i + length < numbers.Length && numbers[i + length] == numbers[i] + length)
                length++;
            if (length < shortest)
                length = 1;
            yield return length == 1
                ? Text(numbers[i])
                : Text(numbers[i]) + To + Text(numbers[i + length - 1]);
            i += length;
        }
    }

    private static bool TryRun(string word, out int from, out int to)
    {
        var split = word.IndexOf(To, StringComparison.Ordinal);
        if (split < 0)
            return TryNumber(word, out from) & ((to = from) > 0);
        return TryNumber(word[..split], out from) & TryNumber(word[(split + To.Length)..], out to);
    }

    private static bool TryNumber(string text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number)
        && number > 0;

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
