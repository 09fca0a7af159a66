using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The order of chips: the largest first, by volume; those of one size in lines from top to bottom, and in each line from left to
/// right, as a page is read; with the left hand from right to left.
/// </summary>
/// <remarks>
/// A line holds the chips of one size whose deepest points lie no more than the radius of the largest circle in its first,
/// topmost chip below that one's.
/// </remarks>
internal sealed class ReadingOrder
{
    /// <summary>Places nearer than this, in mm, differ by rounding.</summary>
    private const double SamePlace = 1e-6;

    /// <summary>For each chip the number of its line, counted over all sizes.</summary>
    private readonly int[] _lines;

    internal ReadingOrder(PlanSource source, CarverView view)
    {
        var chips = source.Chips;
        var places = Array.ConvertAll(chips, chip => view.Seen(chip.Solid.Deepest));
        var across = Ranks.Of(Array.ConvertAll(places, place => place.X), SamePlace);
        var down = Ranks.Of(Array.ConvertAll(places, place => -place.Y), SamePlace);
        _lines = new int[chips.Length];
        int[] sorted =
        [
            .. Enumerable
                .Range(0, chips.Length)
                .OrderBy(i => source.SizeRanks[i])
                .ThenBy(i => down[i])
                .ThenBy(i => across[i]),
        ];
        FindLines(sorted, source, places);
        Order =
        [
            .. sorted
                .OrderBy(i => _lines[i])
                .ThenBy(i => across[i])
                .ThenBy(i => down[i])
                .ThenBy(i => chips[i].Chip.Id),
        ];
        Place = new int[chips.Length];
        for (var i = 0; i < Order.Length; i++)
            Place[Order[i]] = i;
    }

    /// <summary>The numbers of the chips, in order.</summary>
    internal int[] Order { get; }

    /// <summary>For each chip its place in the order.</summary>
    internal int[] Place { get; }

    internal int LineOf(int chip) => _lines[chip];

    private void FindLines(int[] sorted, PlanSource source, Point[] places)
    {
        var line = -1;
        var size = -1;
        double lowest = 0;
        foreach (var chip in sorted)
        {
            if (source.SizeRanks[chip] != size || places[chip].Y < lowest)
            {
                line++;
                size = source.SizeRanks[chip];
                lowest = places[chip].Y - source.Chips[chip].Clearance - SamePlace;
            }
            _lines[chip] = line;
        }
    }
}
