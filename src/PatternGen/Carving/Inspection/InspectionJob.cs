using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What the checks of one inspection share: what they look at, what they hold it against, and what they find.</summary>
internal sealed class InspectionJob(
    ChipLayout layout,
    Cutter cutter,
    Stock stock,
    InspectionLimits limits
)
{
    /// <summary>
    /// Values may miss a limit by this in mm or degrees, and places this near in mm are one: larger than what arithmetic
    /// leaves on a board of a metre, and far below what a knife could.
    /// </summary>
    internal const double Slack = 1e-6;

    /// <summary>Cosine and sine of 45 degrees, from which on a ridge or an edge lies across the grain.</summary>
    private static readonly double Across = Math.Sqrt(0.5) - 1e-9;

    internal ChipLayout Layout => layout;

    internal Cutter Cutter => cutter;

    internal Stock Stock => stock;

    internal InspectionLimits Limits => limits;

    internal List<Occurrence> Found { get; } = [];

    /// <summary>The least floor that is to stay, in mm.</summary>
    internal double Floor => Math.Max(limits.FloorShare * stock.Thickness, limits.Floor);

    /// <summary>Places nearer than this are one.</summary>
    internal double Merge { get; } = Math.Max(Slack, MergeOf(layout));

    /// <summary>The least radius of a side that curves into the chip.</summary>
    internal double HollowRadius =>
        limits.HollowRadius ?? (cutter is Knife knife ? knife.SmallestCurve : 0);

    /// <summary>The same inspection of another layout.</summary>
    internal InspectionJob For(ChipLayout other) => new(other, cutter, stock, limits);

    /// <summary>Runs every check that fits, the quick ones first.</summary>
    internal void Run()
    {
        new ShapeCheck(this).Run();
        new NeighbourCheck(this).Run();
        new WoodCheck(this).Run();
        new RuledLineCheck(this).Run();
    }

    /// <summary>Whether a direction runs across the grain of a chip, at 45 degrees or more to it.</summary>
    internal static bool IsAcrossGrain(in LaidChip chip, Vector direction) =>
        Math.Abs(direction.Cross(chip.Grain)) >= Across * direction.Length;

    /// <summary>The tolerance of the kernel for the whole pattern.</summary>
    private static double MergeOf(ChipLayout layout)
    {
        if (layout.Chips.Count == 0)
            return 0;
        var all = layout.Chips[0].Extents;
        foreach (var chip in layout.Chips)
            all = all.Including(chip.Extents);
        return Tolerance.For(all).Merge;
    }
}
