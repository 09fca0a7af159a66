using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Fills the outline of a field: finds the cells that lie in it, and treats those at its edge as asked.</summary>
internal sealed class FieldSolver
{
    /// <summary>Chips narrower than this, in mm, are hard to cut cleanly: common practice.</summary>
    private const double NarrowChip = 2;

    private readonly FieldDesign _design;
    private readonly FieldEdge _edge;
    private readonly FieldStamps _stamps;
    private readonly Lattice _lattice;
    private readonly FieldCells _cells;
    private readonly RimClipping _clipping;
    private readonly RimShrinking _shrinking;
    private readonly List<LatticePlace> _places = [];
    private readonly List<ScatterPlace> _shrunk = [];

    /// <summary>Cells that are clipped, each with what is known of it so far.</summary>
    private readonly List<CellState> _clippedCells = [];

    private readonly FieldTally _tally = new();

    internal FieldSolver(FieldDesign design, FieldEdge edge)
    {
        _design = design;
        _edge = edge;
        var cells = design.Sizes.ToLattice();
        FieldTrouble.RefuseTooMany(cells, edge.Extents);
        _stamps = new(design, cells);
        _lattice = FieldAlignment.Lay(design, cells);
        FieldTrouble.RefuseTooFar(cells, _lattice, edge.Extents);
        _cells = new(cells, _lattice, edge);
        _clipping = new(edge);
        _shrinking = new(edge, design.Smallest);
    }

    private enum CellState
    {
        LeftOut,
        Whole,
        Clipped,
    }

    /// <summary>Returns the field; its fit tells if nothing is carved.</summary>
    internal FieldPlan Solve()
    {
        foreach (var (m, n, kind, list) in _cells.All())
            if (_stamps.Of(m, n, kind) is { } stamp)
                Take(stamp, _cells.StepsTo(m, n), list);
        var clipped = Clipped();
        foreach (var state in _clippedCells)
            _tally.Add(
                whole: state == CellState.Whole ? 1 : 0,
                clipped: state == CellState.Clipped ? 1 : 0,
                leftOut: state == CellState.LeftOut ? 1 : 0
            );
        PatternNode[] children = [.. _stamps.Children];
        List<PatternNode> nodes = [];
        if (_places.Count > 0)
            nodes.Add(new LatticeNode(children, _lattice, [.. _places]));
        if (_shrunk.Count > 0)
            nodes.Add(new ScatterNode(children, [.. _shrunk]));
        if (clipped is not null)
            nodes.Add(clipped);
        return new(GroupNode.InSameRows(nodes), _tally.ToFit(_design.Outline.Area, Narrowest()));
    }

    private void Take(CellStamp stamp, (int I, int J) steps, int list)
    {
        var inner = OnWood(stamp.Inner, steps);
        if (list < 0)
        {
            if (_edge.Surrounds(inner))
                TakeWhole(stamp, steps);
            return;
        }
        var sides = _cells.SidesOf(list);
        var room = _lattice.Placed(stamp.Room, LatticeTurn.None, steps.I, steps.J);
        switch (_edge.PlaceOf([room], inner, sides))
        {
            case EdgePlace.Inside:
                TakeWhole(stamp, steps);
                break;
            case EdgePlace.Crossing:
                TakeCrossing(stamp, steps, room, sides);
                break;
            default:
                break;
        }
    }

    private void TakeCrossing(CellStamp stamp, (int I, int J) steps, Contour room, List<int> sides)
    {
        if (_design.Rim == FieldRim.ClippedCells)
            TakeClipped(stamp, steps, sides);
        else if (_design.Rim == FieldRim.ShrunkCells)
            TakeShrunk(stamp, steps, room, sides);
        else
            _tally.Add(leftOut: 1);
    }

    private void TakeWhole(CellStamp stamp, (int I, int J) steps)
    {
        _tally.Add(whole: 1);
        foreach (var part in stamp.Parts)
            TakeWhole(Moved(part, steps));
    }

    private void TakeWhole(LatticePlace place)
    {
        _places.Add(place);
        foreach (var chip in _stamps.ChipsOf(place.Child))
            _tally.AddArea(chip.Area);
    }

    private void TakeShrunk(CellStamp stamp, (int I, int J) steps, Contour room, List<int> sides)
    {
        var shrunk = _shrinking.Shrink(
            room,
            OnWood(stamp.Inner, steps),
            OnWood(stamp.Middle, steps),
            sides
        );
        if (shrunk is not var (towards, factor))
        {
            _tally.Add(leftOut: 1);
            return;
        }
        _tally.Add(shrunk: 1);
        var resize = Transform.Resize(factor, towards);
        foreach (var part in stamp.Parts)
        {
            var (i, j, turn, child) = Moved(part, steps);
            _shrunk.Add(new(_lattice.Placement(turn, i, j).Then(resize), child));
            foreach (var chip in _stamps.ChipsOf(child))
                _tally.AddArea(chip.Area * factor * factor);
        }
    }

    private void TakeClipped(CellStamp stamp, (int I, int J) steps, List<int> sides)
    {
        var cell = _clippedCells.Count;
        var state = CellState.Whole;
        _clippedCells.Add(state);
        foreach (var part in stamp.Parts)
        {
            var place = Moved(part, steps);
            var chips = _stamps.ChipsOf(place.Child);
            var within = Array.ConvertAll(chips, chip => Within(chip, place, sides, cell));
            if (Array.TrueForAll(within, isWithin => isWithin))
                TakeWhole(place);
            else
            {
                state = CellState.LeftOut;
                for (var i = 0; i < chips.Length; i++)
                    if (within[i])
                        TakeWhole(place with { Child = _stamps.Single(place.Child, i) });
            }
        }
        _clippedCells[cell] = state;
    }

    /// <summary>Whether a chip lies inside as it is; one that crosses the edge is noted to be clipped.</summary>
    private bool Within(StampChip chip, LatticePlace place, List<int> sides, int cell)
    {
        var rings = Array.ConvertAll(
            chip.Rings,
            ring => _lattice.Placed(ring, place.Turn, place.I, place.J)
        );
        var inner = _lattice.Placement(place.Turn, place.I, place.J).Apply(chip.Inner);
        var where = _edge.PlaceOf(rings, inner, sides);
        if (where == EdgePlace.Crossing)
            _clipping.Add(cell, chip, rings);
        return where == EdgePlace.Inside;
    }

    /// <summary>What is left of the clipped chips, in the rows of the chips that they come from.</summary>
    private MotifNode? Clipped()
    {
        var rows = new List<List<ChipShape>>();
        var narrowest = Narrowest();
        foreach (var chip in _clipping.Clip())
        {
            if (chip.IsNarrowerThan(narrowest))
            {
                _tally.AddSliver(chip.Part.Area);
                continue;
            }
            while (rows.Count <= chip.Chip.Row)
                rows.Add([]);
            rows[chip.Chip.Row].Add(chip.Shape);
            _tally.AddArea(chip.Part.Area);
            _clippedCells[chip.Cell] = CellState.Clipped;
        }
        return rows.Count > 0
            ? new MotifNode { ChipRows = [.. rows.Select(row => row.ToArray())] }
            : null;
    }

    /// <summary>Width under which clipped chips are dropped: what was asked, or else what is hard to cut, but never more than half a whole chip.</summary>
    private double Narrowest()
    {
        if (_design.Narrowest is { } asked)
            return asked;
        var least = NarrowChip;
        for (var child = 0; child < _stamps.Children.Count; child++)
            foreach (var chip in _stamps.ChipsOf(child))
                least = Math.Min(least, chip.Shape.Roof.Clearance * chip.Placement.Scale);
        return least;
    }

    private Point OnWood(Point inFrame, (int I, int J) steps) =>
        _lattice.Placement(LatticeTurn.None, steps.I, steps.J).Apply(inFrame);

    private static LatticePlace Moved(LatticePlace place, (int I, int J) steps) =>
        place with
        {
            I = place.I + steps.I,
            J = place.J + steps.J,
        };
}
