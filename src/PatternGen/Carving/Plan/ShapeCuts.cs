namespace PatternGen;

/// <summary>All cuts of a chip in the motif's own frame: those along its sides, and the stabs before them.</summary>
internal sealed class ShapeCuts
{
    private ShapeCuts(ShapeCut[] stabs, ShapeCut[] sides)
    {
        Stabs = stabs;
        Sides = sides;
    }

    /// <summary>Stabs that run along no side; none unless the valleys are stabbed.</summary>
    internal ShapeCut[] Stabs { get; }

    /// <summary>For each side its cut, in the order of the rings. Of a stab-cut chip two are stabs.</summary>
    internal ShapeCut[] Sides { get; }

    internal int Count => Stabs.Length + Sides.Length;

    /// <summary>The cut of a number, stabs first.</summary>
    internal ShapeCut this[int number] =>
        number < Stabs.Length ? Stabs[number] : Sides[number - Stabs.Length];

    internal static ShapeCuts Of(ChipShape shape, Technique technique)
    {
        if (shape.Cut.Apex is { } apex)
            return new([], StabbedSides.Of(shape.Outline, apex));
        var isStabbed = technique == Technique.StabAndSlice;
        var sides = WallRuns.Of(shape, isStabbed ? CutKind.Slice : CutKind.Cut);
        return new(isStabbed ? ValleyStabs.Of(shape.Roof) : [], sides);
    }
}
