using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One movement of the knife: along which side, from where to where, how deep, and how the board lies.</summary>
/// <remarks>
/// <para>
/// The way that is comfortable for a right-handed carver (common practice, no source): the cut is drawn straight towards
/// the carver, who sits at the lower edge of the drawing, with the blade's back leaning to the right and the chip on its
/// left. So the board is turned until the side to be cut lies that way. A left-handed carver sees all of it mirrored.
/// </para>
/// <para>Immutable and safe to share between threads.</para>
/// </remarks>
public sealed class CarvingStroke
{
    private readonly ShapeCut _cut;
    private readonly bool _isReversed;

    internal CarvingStroke(
        PlannedChip chip,
        ShapeCut cut,
        bool isReversed,
        PlannedCut planned,
        Angle turn,
        GrainRun grain
    )
    {
        Chip = chip;
        _cut = cut;
        _isReversed = isReversed;
        (BoardTurn, Grain) = (turn, grain);
        (Pressure, Reason) = (planned.Pressure, planned.Reason);
    }

    /// <summary>The chip that it belongs to.</summary>
    public PlannedChip Chip { get; }

    /// <summary>What kind of movement it is.</summary>
    public CutKind Kind => _cut.Kind;

    /// <summary>
    /// The side that it runs along, from 1, as the chip's shape is drawn: first those of the outline, counter-clockwise from its first
    /// corner, then those of its holes. 0 for a stab along a valley.
    /// </summary>
    public int Side => _cut.Side + 1;

    /// <summary>The hole that the side belongs to, from 1; 0 for the outline.</summary>
    public int Hole => _cut.Ring;

    /// <summary>Which side of the chip it is, as drawn, or which side of the hole; of a stab along a valley, the way the stab goes.</summary>
    public SideFacing Facing => _cut.FacingOn(Placement);

    /// <summary>The line on the wood, in the direction of the cut.</summary>
    public Chain Path
    {
        get
        {
            var path = _cut.Path.Transformed(Placement);
            return IsBackward ? path.Reversed() : path;
        }
    }

    /// <summary>Where it starts: the tip that the knife goes in at.</summary>
    public Point Start => Placement.Apply(IsBackward ? _cut.Path.End : _cut.Path.Start);

    /// <summary>Where it ends.</summary>
    public Point End => Placement.Apply(IsBackward ? _cut.Path.Start : _cut.Path.End);

    /// <summary>Length in mm.</summary>
    public double Length => _cut.Path.Length * Placement.Scale;

    /// <summary>Direction of the cut as a whole, counter-clockwise from x, from its start to its end; where both are one point, its direction where it is deepest.</summary>
    public Angle Direction
    {
        get
        {
            var direction = Placement.Apply(_cut.Direction);
            return (IsBackward ? -direction : direction).Direction;
        }
    }

    /// <summary>Where the knife's point is deepest on the way, as seen from above; of a stab, where the point is set.</summary>
    public Point Deepest => Placement.Apply(_cut.Deepest);

    /// <summary>Depth there in mm.</summary>
    public double Depth => _cut.Depth * Chip.Source.Unit;

    /// <summary>How far along the cut that is, in mm from its start.</summary>
    public double DeepestAlong =>
        (IsBackward ? _cut.Path.Length - _cut.DeepestAlong : _cut.DeepestAlong) * Placement.Scale;

    /// <summary>Depth in mm where it starts: 0 in a tip, more at a corner that points into the chip, and of a stab the full depth.</summary>
    public double StartDepth => (IsBackward ? _cut.EndDepth : _cut.StartDepth) * Chip.Source.Unit;

    /// <summary>Depth in mm where it ends: 0 in a tip, more at a corner that points into the chip, where the knife stops.</summary>
    public double EndDepth => (IsBackward ? _cut.StartDepth : _cut.EndDepth) * Chip.Source.Unit;

    /// <summary>The angle between blade and surface: that of the wall, or of the floor where a stab-cut chip is sliced; 90 degrees of a stab.</summary>
    public Angle BladeAngle =>
        Kind == CutKind.Stab ? Angle.FromDegrees(90) : Chip.Source.BladeAngle;

    /// <summary>
    /// How far the board is turned from how the pattern is drawn, counter-clockwise, more than -180 degrees and up to 180.
    /// The cut then runs towards the carver to within 5 degrees, which the wrist takes up.
    /// </summary>
    public Angle BoardTurn { get; }

    /// <summary>How hard to press.</summary>
    public Pressure Pressure { get; }

    /// <summary>How it runs to the grain.</summary>
    public GrainRun Grain { get; }

    /// <summary>The rule that put it where it stands among the cuts.</summary>
    public PlanReason Reason { get; }

    /// <summary>Whether it runs along no side, but along a valley.</summary>
    internal bool IsAlongValley => _cut.Side < 0;

    /// <summary>Whether the chip lies on the left of the way.</summary>
    internal bool HasChipOnLeft => !_cut.HasChipOnRight ^ Placement.IsMirrored ^ IsBackward;

    private Transform Placement => Chip.Chip.Placement;

    /// <summary>Whether it runs against the path as drawn in the motif.</summary>
    private bool IsBackward => _isReversed && _cut.Kind != CutKind.Stab;

    /// <summary>Returns kind, ends and depth, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Kind} from {Start} to {End}, {Depth:0.###} mm deep");
}
