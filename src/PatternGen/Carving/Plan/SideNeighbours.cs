using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// Which chips lie beyond which sides: those that share a part of the side, so that the ridge between is sharp, and those
/// that come nearer than a thin ridge to where the side is cut deepest. Chips that only meet in tips are no neighbours.
/// </summary>
internal sealed class SideNeighbours
{
    /// <summary>A ridge narrower than this, in mm, is thin: as the inspection has it.</summary>
    private static readonly double ThinRidge = InspectionLimits.Default.Ridge;

    /// <summary>Sides this near in mm are one: placed copies of a corner agree to much less.</summary>
    private const double SamePlace = 1e-6;

    private static readonly Tolerance Merging = Tolerance.OfMerge(SamePlace);

    private readonly List<Piece> _pieces = [];
    private readonly Point[][] _deepest;
    private readonly Dictionary<(int Chip, int Side), List<int>> _beyond = [];

    internal SideNeighbours(PlanSource source, Technique technique)
    {
        var chips = source.Chips;
        _deepest = new Point[chips.Length][];
        for (var chip = 0; chip < chips.Length; chip++)
            Collect(chip, chips[chip], source.CutsOf(chips[chip].Shape, technique));
        var boxes = _pieces.ConvertAll(piece => piece.Segment.Extents.Grown(ThinRidge / 2));
        new ExtentsGrid([.. boxes]).VisitPairs((i, j) => Compare(_pieces[i], _pieces[j]));
    }

    /// <summary>The chips beyond a side, in the order of the pattern.</summary>
    internal IReadOnlyList<int> Beyond(int chip, int side) =>
        _beyond.TryGetValue((chip, side), out var chips) ? chips : [];

    /// <summary>All pairs of neighbours, each from both sides.</summary>
    internal IEnumerable<(int Chip, int Other)> Pairs =>
        _beyond.SelectMany(entry =>
            entry.Value.SelectMany(other =>
                ((int, int)[])[(entry.Key.Chip, other), (other, entry.Key.Chip)]
            )
        );

    private void Collect(int number, PlanChip chip, ShapeCuts cuts)
    {
        _deepest[number] = new Point[cuts.Sides.Length];
        for (var side = 0; side < cuts.Sides.Length; side++)
        {
            var path = cuts.Sides[side].Path;
            _deepest[number][side] = chip.Chip.Placement.Apply(
                path.PointAt(MiddleOf(cuts.Sides[side]))
            );
            foreach (var segment in path.Transformed(chip.Chip.Placement).Segments)
                _pieces.Add(new(number, side, segment));
        }
    }

    /// <summary>Where a leaning cut is deepest; an upright wall is deepest in a corner, where many sides are near.</summary>
    private static double MiddleOf(ShapeCut cut) =>
        cut.Kind == CutKind.Stab ? cut.Path.Length / 2 : cut.DeepestAlong;

    private void Compare(Piece one, Piece other)
    {
        if (one.Chip == other.Chip)
            return;
        if (Runs(one.Segment, other.Segment))
        {
            Add(one, other);
            Add(other, one);
            return;
        }
        if (IsThin(one, other))
            Add(one, other);
        if (IsThin(other, one))
            Add(other, one);
    }

    private bool IsThin(Piece side, Piece other) =>
        other.Segment.DistanceTo(_deepest[side.Chip][side.Side]) < ThinRidge - SamePlace;

    private static bool Runs(Segment one, Segment other) =>
        one.Extents.Grown(SamePlace).Touches(other.Extents)
        && one.Intersect(other, Merging).Kind == IntersectionKind.Overlapping;

    private void Add(Piece side, Piece other)
    {
        if (!_beyond.TryGetValue((side.Chip, side.Side), out var chips))
            _beyond[(side.Chip, side.Side)] = chips = [];
        if (!chips.Contains(other.Chip))
            chips.Add(other.Chip);
    }

    private readonly record struct Piece(int Chip, int Side, Segment Segment);
}
