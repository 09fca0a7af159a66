using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The shapes of chips that a file holds once and refers to, each as its first copy lies on the wood.</summary>
/// <remarks>
/// A copy of another size is a shape of its own, because scaling a reference would scale the width of its line. A
/// mirrored chip is never a copy, because readers disagree about what mirroring does to an arc.
/// </remarks>
internal sealed class RepeatedShapes
{
    /// <summary>
    /// Sizes that agree to this many decimals are one: turning a motif leaves its scale within a few units in the last
    /// place of 1.
    /// </summary>
    private const int ScaleDecimals = 12;

    private readonly Dictionary<Size, Found> _found = [];
    private readonly List<ChipShape> _shapes = [];

    private RepeatedShapes() { }

    /// <summary>None: every chip is written out.</summary>
    internal static RepeatedShapes None { get; } = new();

    /// <summary>The shapes that have copies, in the order in which their second copies appear.</summary>
    internal IReadOnlyList<ChipShape> Shapes => _shapes;

    /// <summary>Number of holes in all copies together, which are not written out.</summary>
    internal long HoleCount { get; private set; }

    /// <summary>Returns what is drawn more than once, if the options ask to refer to it.</summary>
    internal static RepeatedShapes Of(Pattern pattern, SaveOptions options)
    {
        if (options.Repeats == Repeats.InFull)
            return None;
        var shapes = new RepeatedShapes();
        pattern.Root.Draw(new Counter(shapes), LayerSet.Chips);
        return shapes;
    }

    /// <summary>Decimals of a shape's corners: more than the file has elsewhere, so that only the place of a copy is rounded.</summary>
    internal static int Decimals(int decimals) => Math.Min(decimals + 3, SaveOptions.MaxDecimals);

    /// <summary>Returns the chip as a copy, or null if it is to be written out.</summary>
    internal ChipCopy? CopyOf(in PlacedChip chip)
    {
        // Most files refer to nothing, and need no look-up for each chip.
        if (_shapes.Count == 0 || chip.Placement.IsMirrored)
            return null;
        var found = _found[SizeOf(chip)];
        if (found.Number is not { } number)
            return null;
        var turn = (chip.Placement.Turn - found.Turn).Degrees;
        return new(
            number,
            chip.Corners[0].Point,
            Math.Round(Math.IEEERemainder(turn, 360), ChipCopy.TurnDecimals)
        );
    }

    private void Count(in PlacedChip chip)
    {
        if (chip.Placement.IsMirrored)
            return;
        var size = SizeOf(chip);
        if (!_found.TryGetValue(size, out var found))
        {
            _found[size] = new(new(chip.ToOutline(), chip.ToHoles()), chip.Placement.Turn);
            return;
        }
        HoleCount += chip.RingCount - 1;
        if (found.Number is not null)
            return;
        found.Number = _shapes.Count;
        _shapes.Add(found.First);
        // Now that it has a copy, the first one is a reference too.
        HoleCount += found.First.Holes.Count;
    }

    private static Size SizeOf(in PlacedChip chip) =>
        new(chip.Shape, Math.Round(chip.Placement.Scale, ScaleDecimals));

    /// <summary>A motif's shape, which all its repeats share, in one size.</summary>
    private readonly record struct Size(ChipShape Shape, double Scale);

    /// <summary>A shape as its first copy lies.</summary>
    private sealed class Found(ChipShape first, Angle turn)
    {
        internal ChipShape First { get; } = first;

        internal Angle Turn { get; } = turn;

        /// <summary>Its number among the shapes that have copies; null as long as there is one of it.</summary>
        internal int? Number { get; set; }
    }

    private sealed class Counter(RepeatedShapes shapes) : SelectiveSink
    {
        public override void Chip(in PlacedChip chip) => shapes.Count(chip);
    }
}
