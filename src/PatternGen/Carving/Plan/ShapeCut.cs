using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One movement of the knife in the motif's own frame; all repeats of a chip share it.</summary>
internal sealed class ShapeCut
{
    /// <summary>Share of the deepest place's depth that is rounding. In a tip where two sides touch, half of all digits are lost.</summary>
    private const double SmallestShare = 1e-7;

    internal required CutKind Kind { get; init; }

    /// <summary>Of a side: as outlines run, with the chip on the left. Of a stab: from the deepest place outwards.</summary>
    internal required Chain Path { get; init; }

    /// <summary>Whether the chip lies on the right of the path: so of one of the two stabs of a stab-cut chip.</summary>
    internal bool HasChipOnRight { get; init; }

    /// <summary>The side that it runs along, counted from 0 over all rings; -1 if it runs along none.</summary>
    internal required int Side { get; init; }

    /// <summary>The ring of that side: 0 is the outline, holes follow.</summary>
    internal int Ring { get; init; }

    /// <summary>Where the point of the knife is deepest, as seen from above.</summary>
    internal required Point Deepest { get; init; }

    /// <summary>Where along the path that is, in mm.</summary>
    internal required double DeepestAlong { get; init; }

    /// <summary>Depth there, in units of the chip.</summary>
    internal required double Depth { get; init; }

    /// <summary>Depths at both ends of the path, in units of the chip: 0 in tips.</summary>
    internal double StartDepth { get; init; }

    /// <inheritdoc cref="StartDepth"/>
    internal double EndDepth { get; init; }

    /// <summary>Whether the cut goes all round without a corner.</summary>
    internal bool IsRound { get; init; }

    /// <summary>Whether the blade is held as the floor of a stab-cut chip slopes.</summary>
    internal bool IsFloor { get; init; }

    /// <summary>Returns the depth at an end: in a tip it is 0, whatever rounding has left.</summary>
    /// <param name="depth">Depth at the end.</param>
    /// <param name="deepest">Depth where the cut is deepest.</param>
    internal static double AtEnd(double depth, double deepest) =>
        depth <= SmallestShare * deepest ? 0 : depth;

    /// <summary>The direction of the cut as a whole, of length 1: from end to end, or where it is deepest if they are one point.</summary>
    internal Vector Direction
    {
        get
        {
            var chord = Path.End - Path.Start;
            return chord.Length > 1e-6 * Path.Length
                ? chord.Unit()
                : Path.TangentAt(IsRound ? 0 : DeepestAlong);
        }
    }

    /// <summary>The direction from the chip to the ground beyond the side, of length 1.</summary>
    internal Vector Outward
    {
        get
        {
            // Of an upright wall the middle tells: it is deepest in a corner.
            var left = Path.NormalAt(Kind == CutKind.Stab ? Path.Length / 2 : DeepestAlong);
            return HasChipOnRight ? left : -left;
        }
    }

    /// <summary>Which side of the chip, or of its hole, it is on the drawing; of a stab along no side, which way it goes.</summary>
    internal SideFacing FacingOn(Transform placement)
    {
        var facing =
            Side < 0 ? Direction
            : Ring > 0 ? -Outward
            : Outward;
        return SideFacings.Of(placement.Apply(facing));
    }
}
