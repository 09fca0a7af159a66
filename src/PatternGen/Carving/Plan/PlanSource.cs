namespace PatternGen;

/// <summary>What all plans of a pattern share, whatever their order, technique and hand: its chips, read once.</summary>
internal sealed class PlanSource
{
    /// <summary>Volumes that agree to this share are equal: copies differ by less, and no knife could tell.</summary>
    private const double SameSize = 1e-6;

    private readonly Lazy<PlanChip[]> _chips;
    private readonly Lazy<int[]> _sizes;
    private readonly Dictionary<(ChipShape, Technique), ShapeCuts> _cuts = [];
    private readonly object _lock = new();

    internal PlanSource(Pattern pattern, Knife knife, Stock stock)
    {
        (Pattern, Knife, Stock) = (pattern, knife, stock);
        _chips = new(Read);
        _sizes = new(() =>
            Ranks.Of([.. Chips.Select(chip => -Math.Log(chip.Solid.Volume))], SameSize)
        );
    }

    internal Pattern Pattern { get; }

    internal Knife Knife { get; }

    internal Stock Stock { get; }

    internal PlanChip[] Chips => _chips.Value;

    /// <summary>For each chip the rank of its volume, 0 for the largest.</summary>
    internal int[] SizeRanks => _sizes.Value;

    internal ShapeCuts CutsOf(ChipShape shape, Technique technique)
    {
        lock (_lock)
        {
            if (!_cuts.TryGetValue((shape, technique), out var cuts))
                _cuts[(shape, technique)] = cuts = ShapeCuts.Of(shape, technique);
            return cuts;
        }
    }

    /// <summary>The line cuts as the knife cuts them.</summary>
    internal Groove[] Grooves() => [.. Pattern.LineCuts.Select(line => line.CutWith(Knife))];

    private PlanChip[] Read()
    {
        var reader = new Reader(Knife, Stock);
        Pattern.Root.Draw(reader, LayerSet.Chips);
        return [.. reader.Chips];
    }

    private sealed class Reader(Knife knife, Stock stock) : SelectiveSink
    {
        internal List<PlanChip> Chips { get; } = [];

        public override void Chip(in PlacedChip chip) =>
            Chips.Add(new(new(chip), chip.Shape, knife, stock));
    }
}
