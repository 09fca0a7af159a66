using System.Text;

namespace PatternGen;

/// <summary>Writes lists of chips shortly: <c>1.1-1.91, 2.3</c>.</summary>
internal static class ChipList
{
    internal static string Of(IReadOnlyList<PlannedChip> chips)
    {
        var text = new StringBuilder();
        for (var first = 0; first < chips.Count; )
        {
            var last = first;
            while (last + 1 < chips.Count && Follows(chips[last].Chip.Id, chips[last + 1].Chip.Id))
                last++;
            if (first > 0)
                text.Append(", ");
            text.Append(chips[first].Chip.Id);
            if (last > first)
                text.Append('-').Append(chips[last].Chip.Id);
            first = last + 1;
        }
        return text.ToString();
    }

    private static bool Follows(ChipId before, ChipId after) =>
        before.Row == after.Row && Math.Abs(before.Index - after.Index) == 1;
}
