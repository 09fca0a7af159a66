using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What a plan adds up to.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class PlanTotals
{
    private readonly int[] _sizes = new int[3];

    internal PlanTotals(
        IReadOnlyList<PlannedChip> chips,
        IReadOnlyList<CarvingStroke> strokes,
        IReadOnlyList<Groove> grooves
    )
    {
        LineCuts = grooves.Count;
        LineCutLength = grooves.Sum(groove => groove.Path.Length);
        LineCutVolume = grooves.Sum(groove => groove.Volume);
        (Chips, Strokes) = (chips.Count, strokes.Count);
        foreach (var chip in chips)
        {
            _sizes[(int)chip.Size]++;
            Volume += chip.Solid.Volume;
            Deepest = Math.Max(Deepest, chip.Solid.Depth);
        }
        foreach (var stroke in strokes)
        {
            Length += stroke.Length;
            if (stroke.Pressure == Pressure.Light)
                LightStrokes++;
        }
    }

    /// <summary>Number of chips.</summary>
    public int Chips { get; }

    /// <summary>Number of cuts, stabs and slices.</summary>
    public int Strokes { get; }

    /// <summary>Number of those that are made lightly.</summary>
    public int LightStrokes { get; }

    /// <summary>Length of all cuts in mm, along the sides and, of stabs, along the valleys.</summary>
    public double Length { get; }

    /// <summary>Wood removed, in mm³; a thousand of them are a cm³.</summary>
    public double Volume { get; }

    /// <summary>Number of line cuts. They are no chips and stand in no step: each takes a leaning cut along either side, when the chips are out.</summary>
    public int LineCuts { get; }

    /// <summary>Length of the line cuts in mm, along their valleys; the knife goes along each twice.</summary>
    public double LineCutLength { get; }

    /// <summary>Wood removed by the line cuts, in mm³, besides <see cref="Volume"/>.</summary>
    public double LineCutVolume { get; }

    /// <summary>Depth of the deepest chip in mm; 0 if there is none.</summary>
    public double Deepest { get; }

    /// <summary>Returns the number of chips of a size class.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    public int ChipsOf(ChipSize size) => _sizes[(int)Guard.Defined(size)];
}
