namespace PatternGen;

/// <summary>The paths of the distinct shapes of a pattern, and its line cuts: what repeats share.</summary>
internal sealed class GrooveSet
{
    /// <summary>Sizes of one shape share paths from one of these steps for each doubling to the next.</summary>
    private const double SizesPerDoubling = 4;

    private readonly Dictionary<(ChipShape Shape, int Size), GrooveRun[]> _runs = [];
    private readonly VBit _bit;
    private readonly double _clearance;

    internal GrooveSet(VBit bit, double accuracy)
    {
        _bit = bit;
        Slope = Math.Tan(bit.WallAngle.Radians);
        _clearance = accuracy / Slope;
    }

    /// <summary>Depth over clearance.</summary>
    internal double Slope { get; }

    /// <summary>Returns the paths of a chip in its own frame; null if the bit can't cut it.</summary>
    /// <remarks>Once every shape has been asked for, nothing changes any more.</remarks>
    internal GrooveRun[]? RunsOf(PlacedShape chip)
    {
        var scale = chip.Placement.Scale;
        if (BitTrouble.Of(chip.Shape, scale, _bit) is not null)
            return null;
        // The least step up within rounding: what is scaled by less is the more accurate for it.
        var size = (int)Math.Ceiling(SizesPerDoubling * Math.Log2(scale) - 1e-6);
        if (!_runs.TryGetValue((chip.Shape, size), out var runs))
        {
            var largest = Math.Pow(2, size / SizesPerDoubling);
            runs = ChipRuns.Of(chip.Shape.Roof, _clearance / largest);
            _runs.Add((chip.Shape, size), runs);
        }
        return runs;
    }

    internal GrooveRun? RunOf(LineCut cut) =>
        BitTrouble.Of(cut, _bit) is null ? LineCutRuns.Of(cut, _clearance) : null;
}
