using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A row of three-sided chips between two rules of a band.</summary>
/// <remarks>Each method returns a changed copy. Immutable and safe to share between threads.</remarks>
public sealed class TriangleRow
{
    private TriangleRow(int lowerRule, int upperRule)
    {
        LowerRule = lowerRule;
        UpperRule = upperRule;
    }

    private TriangleRow(TriangleRow other)
        : this(other.LowerRule, other.UpperRule)
    {
        Pointing = other.Pointing;
        IsStaggered = other.IsStaggered;
        Lean = other.Lean;
        LeftSagitta = other.LeftSagitta;
        RightSagitta = other.RightSagitta;
        BaseSagitta = other.BaseSagitta;
        Gap = other.Gap;
        Cut = other.Cut;
    }

    /// <summary>Number of the rule below, counted from 0 at the lower edge of the band.</summary>
    public int LowerRule { get; }

    /// <summary>Number of the rule above.</summary>
    public int UpperRule { get; }

    /// <summary>Which way the tips point. Default up.</summary>
    public Pointing Pointing { get; private init; }

    /// <summary>Whether the row is shifted by half a pitch. Default no: in step.</summary>
    public bool IsStaggered { get; private init; }

    /// <summary>
    /// Where the tip stands over the base: 0 over the middle (the default), -1 over the left end, 1 over the right end.
    /// </summary>
    public double Lean { get; private init; }

    /// <summary>Height of the arc of the left side over its chord, in mm; positive bulges out of the chip, negative into it. Default 0: straight.</summary>
    public double LeftSagitta { get; private init; }

    /// <summary>The same for the right side.</summary>
    public double RightSagitta { get; private init; }

    /// <summary>The same for the base. Only hollow bases (negative) stay behind their rule.</summary>
    public double BaseSagitta { get; private init; }

    /// <summary>Ground left between the bases of neighbours, in mm. Default 0: their corners touch.</summary>
    public double Gap { get; private init; }

    /// <summary>Whether the chips are stab-cut, with two upright walls that meet at the tip. Default no: walls all round.</summary>
    public bool IsStabCut => Cut.IsStabbed;

    /// <summary>How the chips are cut; if stabbed, at the tip, whichever corner that is.</summary>
    internal ChipCut Cut { get; private init; } = ChipCut.Walls;

    /// <summary>Whether the chip is its own mirror image, left and right.</summary>
    public bool IsUpright => Lean == 0 && LeftSagitta == RightSagitta;

    /// <summary>Returns a row of straight-sided triangles that point up, in step.</summary>
    /// <param name="lowerRule">Number of the rule below, from 0.</param>
    /// <param name="upperRule">Number of the rule above.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rules are not in order.</exception>
    public static TriangleRow Between(int lowerRule, int upperRule)
    {
        Guard.Within(lowerRule, 0, TriangleBand.MaxRules - 1);
        Guard.Within(upperRule, lowerRule + 1, TriangleBand.MaxRules - 1);
        return new(lowerRule, upperRule);
    }

    /// <summary>Returns the row with its tips up.</summary>
    [Pure]
    public TriangleRow Up() => new(this) { Pointing = Pointing.Up };

    /// <summary>Returns the row with its tips down.</summary>
    [Pure]
    public TriangleRow Down() => new(this) { Pointing = Pointing.Down };

    /// <summary>Returns the row shifted by half a pitch.</summary>
    [Pure]
    public TriangleRow Staggered() => new(this) { IsStaggered = true };

    /// <summary>Returns the row in step with the pitch.</summary>
    [Pure]
    public TriangleRow InStep() => new(this) { IsStaggered = false };

    /// <summary>Returns the row with leaning triangles.</summary>
    /// <param name="lean">From -1, tip over the left end of the base, through 0 to 1, over the right end.</param>
    /// <exception cref="ArgumentOutOfRangeException">Beyond -1 to 1.</exception>
    [Pure]
    public TriangleRow Leaning(double lean) => new(this) { Lean = Guard.Within(lean, -1, 1) };

    /// <summary>Returns the row with both slanted sides curved alike.</summary>
    /// <param name="sagitta">Height of the arc in mm: positive bulges out of the chip, negative into it, 0 is straight.</param>
    [Pure]
    public TriangleRow Curved(double sagitta) => Curved(sagitta, sagitta);

    /// <summary>Returns the row with each slanted side curved as given, in mm.</summary>
    [Pure]
    public TriangleRow Curved(double left, double right) =>
        new(this)
        {
            LeftSagitta = Guard.Within(left, -Guard.MaxSize, Guard.MaxSize),
            RightSagitta = Guard.Within(right, -Guard.MaxSize, Guard.MaxSize),
        };

    /// <summary>Returns the row with hollow bases.</summary>
    /// <param name="depth">How far the arc rises into the chip, in mm, 0 or more.</param>
    [Pure]
    public TriangleRow HollowBase(double depth) =>
        new(this) { BaseSagitta = -Guard.NotNegative(depth) };

    /// <summary>Returns the row with ground left between the bases of neighbours.</summary>
    /// <param name="gap">In mm, 0 or more.</param>
    [Pure]
    public TriangleRow WithGap(double gap) => new(this) { Gap = Guard.NotNegative(gap) };

    /// <summary>
    /// Returns the row with stab-cut chips: upright walls along both slanted sides, deepest at the tip, a floor that rises to
    /// the base, which has to be straight.
    /// </summary>
    /// <param name="slope">Angle between floor and surface in degrees, from 5 to 70; 30 if neither slope nor depth is given.</param>
    /// <param name="depth">Depth at the tip in mm, more than 0.</param>
    /// <exception cref="ArgumentException">Both slope and depth are given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The slope or the depth is out of range.</exception>
    [Pure]
    public TriangleRow StabCut(double? slope = null, double? depth = null) =>
        new(this) { Cut = ChipCut.Stabbed(0, slope, depth) };

    /// <summary>Returns the row with its chips cut in a way, whose apex is the tip.</summary>
    internal TriangleRow WithCut(ChipCut cut) => new(this) { Cut = cut };

    /// <summary>Returns the row as a mirror that swaps left and right shows it.</summary>
    internal TriangleRow MirroredLeftRight() =>
        new(this)
        {
            Lean = -Lean,
            LeftSagitta = RightSagitta,
            RightSagitta = LeftSagitta,
        };
}
