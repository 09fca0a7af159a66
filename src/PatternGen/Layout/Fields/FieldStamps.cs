using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What is carved in the cells of a field: a stamp for each way that a cell may look, with all shapes shared.</summary>
internal sealed class FieldStamps
{
    private readonly FieldDesign _design;
    private readonly CellLattice _cells;
    private readonly LatticeTurn[] _turns;
    private readonly List<PatternNode> _children = [];
    private readonly List<StampChip[]> _chips = [];
    private readonly List<(CellCorner[] Ring, int[] Children)> _shapes = [];
    private readonly Dictionary<(int, int, bool), int> _motifs = [];
    private readonly Dictionary<(int, int, int, bool), CellStamp> _stamps = [];

    internal FieldStamps(FieldDesign design, CellLattice cells)
    {
        _design = design;
        _cells = cells;
        _turns = LatticeTurn.Of(cells.A, cells.B);
    }

    /// <summary>What stamps are made of, in the lattice's frame; the parts of stamps refer to it.</summary>
    internal IReadOnlyList<PatternNode> Children => _children;

    /// <summary>The chips of a child.</summary>
    internal StampChip[] ChipsOf(int child) => _chips[child];

    /// <summary>Returns a child that is only one of another's chips.</summary>
    internal int Single(int child, int chip)
    {
        var one = _chips[child][chip];
        var rows = new ChipShape[one.Row + 1][];
        Array.Fill(rows, []);
        rows[one.Row] = [one.Shape];
        return Add(new PlacedNode(new MotifNode { ChipRows = rows }, one.Placement));
    }

    /// <summary>Returns what is carved in a cell, or null if it is left standing.</summary>
    internal CellStamp? Of(int m, int n, int kind)
    {
        if (!_design.Carved.Holds(_cells, m, n, kind))
            return null;
        var motif = _design.Motifs.IndexAt(_cells, m, n, kind);
        if (_design.Motifs.Values.Length > 0 && _design.Motifs.Values[motif].ChipCount == 0)
            return null;
        var turn = _design.Turns.IndexAt(_cells, m, n, kind);
        var mirrored = _design.Mirrored.Holds(_cells, m, n, kind);
        var key = (kind, motif, turn, mirrored);
        if (!_stamps.TryGetValue(key, out var stamp))
            _stamps[key] = stamp = Make(kind, motif, turn, mirrored);
        return stamp;
    }

    private CellStamp Make(int number, int motif, int turn, bool mirrored)
    {
        var kind = _cells.Kinds[number];
        var lattice = _cells.On(Point.Origin, Angle.Zero);
        var middle = lattice.InFrame(kind.Centre.I, kind.Centre.J);
        var cell = Inset(_cells.InFrame(kind.Room)).MaxBy(part => part.Area)!.Outer;
        if (_design.Motifs.Values.Length > 0)
            return OfMotif(kind, middle, cell, Motif(motif, turn, mirrored));
        var parts = Turned(kind, turn, mirrored).SelectMany(Place).ToArray();
        return new(cell, InsidePlace.Of(new(cell, [])).Point, middle, parts);
    }

    private CellStamp OfMotif(CellKind kind, Point middle, Contour cell, int child)
    {
        var room = MotifRoom.Of(_chips[child], cell, middle);
        return new(
            room,
            middle,
            middle,
            [new(kind.Centre.I, kind.Centre.J, LatticeTurn.None, child)]
        );
    }

    /// <summary>The chips of a cell as rings of lattice points, divided and turned as asked.</summary>
    private IEnumerable<CellCorner[]> Turned(CellKind kind, int turn, bool mirrored)
    {
        var rings = Divided(kind);
        var angle = _design.Turns.Values.Length > 0 ? _design.Turns.Values[turn] : Angle.Zero;
        if (!mirrored && angle.Normalized() == Angle.Zero)
            return rings;
        var within =
            CellSymmetry.Find(_cells, _turns, kind, angle, mirrored)
            ?? throw FieldTrouble.NotItsCell(_cells.Sizes, angle, mirrored);
        return rings.Select(ring => CellSymmetry.Turned(ring, kind.Centre, within));
    }

    private IEnumerable<CellCorner[]> Divided(CellKind kind)
    {
        if (_design.Division == CellDivision.Whole)
            return kind.Parts;
        if (kind.Parts.Length > 1)
            throw FieldTrouble.DividedAlready(_cells.Sizes);
        if (_design.Division == CellDivision.FromCentre)
            return kind.FromCentre();
        return kind.Room.Length % 2 == 0
            ? kind.FromCentre().Where((_, k) => k % 2 == 0)
            : throw FieldTrouble.OddSides(_cells.Sizes, kind.Room.Length);
    }

    /// <summary>The chips of a ring: those of a ring like it, turned and moved, or else new ones.</summary>
    private IEnumerable<LatticePlace> Place(CellCorner[] ring)
    {
        foreach (var (known, children) in _shapes)
        foreach (var turn in _turns)
            if (CellSymmetry.OffsetTo(known, ring, turn) is { } offset)
                return children.Select(child => new LatticePlace(offset.I, offset.J, turn, child));
        int[] made =
        [
            .. Inset(_cells.InFrame(ring))
                .Select(part => Add(Leaf(new ChipShape(part.Outer, [.. part.Holes])))),
        ];
        _shapes.Add((ring, made));
        return made.Select(child => new LatticePlace(0, 0, LatticeTurn.None, child));
    }

    private static MotifNode Leaf(ChipShape shape) =>
        new()
        {
            ChipRows =
            [
                [shape],
            ],
        };

    /// <summary>What a ridge of half the gap leaves of a cell.</summary>
    private IReadOnlyList<RegionPart> Inset(Contour ring)
    {
        if (_design.RidgeGap == 0)
            return [new(ring, [])];
        var inset = ring.Inset(_design.RidgeGap / 2);
        return inset.IsEmpty
            ? throw FieldTrouble.RidgesTooWide(ring, _design.RidgeGap)
            : inset.Parts;
    }

    private int Motif(int motif, int turn, bool mirrored)
    {
        if (_motifs.TryGetValue((motif, turn, mirrored), out var known))
            return known;
        var angle = _design.Turns.Values.Length > 0 ? _design.Turns.Values[turn] : Angle.Zero;
        var placement = Transform.Rotate(angle);
        if (mirrored)
            placement = Transform.MirrorLeftRight().Then(placement);
        return _motifs[(motif, turn, mirrored)] = Add(
            new PlacedNode(_design.Motifs.Values[motif].Root, placement)
        );
    }

    private int Add(PatternNode node)
    {
        _children.Add(node);
        _chips.Add(StampChip.Of(node));
        return _children.Count - 1;
    }
}
