using System.Globalization;
using System.Text;

namespace PatternGen;

/// <summary>Writes lists of chips shortly.</summary>
internal static class ChipList
{
    /// <summary>The chips by their names: <c>1.1-1.91, 2.3</c>.</summary>
    internal static string OfIds(IReadOnlyList<PlannedChip> chips) =>
        Runs(
            chips,
            chip => chip.Chip.Id.ToString(),
            (before, after) =>
                before.Chip.Id.Row == after.Chip.Id.Row
                && AreNext(before.Chip.Id.Index, after.Chip.Id.Index)
        );

    /// <summary>The chips by their numbers in the order and on the drawing: <c>1-91, 95</c>.</summary>
    internal static string OfNumbers(IReadOnlyList<PlannedChip> chips) =>
        Runs(
            chips,
            chip => chip.Number.ToString(CultureInfo.InvariantCulture),
            (before, after) => AreNext(before.Number, after.Number)
        );

    private static string Runs(
        IReadOnlyList<PlannedChip> chips,
        Func<PlannedChip, string> name,
        Func<PlannedChip, PlannedChip, bool> follows
    )
    {
        var text = new StringBuilder();
        for (var first = 0; first < chips.Count; )
        {
            var last = first;
            while (last + 1 < chips.Count && follows(chips[last], chips[last + 1]))
                last++;
            if (first > 0)
                text.Append(", ");
            text.Append(name(chips[first]));
            if (last > first)
                text.Append('-').Append(name(chips[last]));
            first = last + 1;
        }
        return text.ToString();
    }

    private static bool AreNext(int before, int after) => Math.Abs(before - after) == 1;
}
