using PatternGen.Geometry;

namespace PatternGen;

/// <summary>All that an inspection looks at of a pattern: chips with their shapes, ruled lines and the outline of the wood.</summary>
internal sealed class ChipLayout : SelectiveSink
{
    private readonly Stock _stock;
    private readonly List<LaidChip> _chips;
    private readonly List<ShapeFacts> _shapes = [];
    private readonly Dictionary<ChipShape, int> _numbers = [];
    private readonly List<Segment> _lines = [];
    private readonly List<Contour> _wood = [];

    private ChipLayout(Stock stock, int chipCount) =>
        (_stock, _chips) = (stock, new List<LaidChip>(chipCount));

    internal IReadOnlyList<LaidChip> Chips => _chips;

    /// <summary>The shapes that chips refer to by their numbers.</summary>
    internal IReadOnlyList<ShapeFacts> Shapes => _shapes;

    /// <summary>The straight layout lines.</summary>
    internal IReadOnlyList<Segment> Lines => _lines;

    /// <summary>The outlines of the wood; none if the pattern does not say.</summary>
    internal IReadOnlyList<Contour> Wood => _wood;

    internal static ChipLayout Of(Pattern pattern, Stock stock)
    {
        var layout = new ChipLayout(stock, (int)pattern.Root.ChipCount);
        pattern.Root.Draw(layout, LayerSet.Chips | LayerSet.LayoutLines | LayerSet.Stock);
        return layout;
    }

    /// <summary>The same chips scaled about the origin, without lines and wood.</summary>
    internal ChipLayout Scaled(double factor)
    {
        var resize = Transform.Resize(factor);
        return Moved(chip =>
            chip with
            {
                Placement = chip.Placement.Then(resize),
                Extents = new(resize.Apply(chip.Extents.Min), resize.Apply(chip.Extents.Max)),
            }
        );
    }

    /// <summary>The same chips with their middles farther from each other, without lines and wood.</summary>
    internal ChipLayout Spread(double factor) =>
        Moved(chip =>
        {
            var move = (chip.Extents.Centre - Point.Origin) * (factor - 1);
            return chip with
            {
                Placement = chip.Placement.Then(Transform.Move(move)),
                Extents = new(chip.Extents.Min + move, chip.Extents.Max + move),
            };
        });

    private ChipLayout Moved(Func<LaidChip, LaidChip> move)
    {
        var moved = new ChipLayout(_stock, _chips.Count);
        moved._shapes.AddRange(_shapes);
        moved._chips.AddRange(_chips.Select(move));
        return moved;
    }

    internal ShapeFacts ShapeOf(in LaidChip chip) => _shapes[chip.Shape];

    public override void Chip(in PlacedChip chip)
    {
        if (!_numbers.TryGetValue(chip.Shape, out var number))
        {
            number = _shapes.Count;
            _numbers.Add(chip.Shape, number);
            _shapes.Add(new(chip.Shape));
        }
        // Inside the tree rows and places are counted from 0.
        var id = new ChipId(chip.Id.Row + 1, chip.Id.Index + 1);
        _chips.Add(new(id, number, chip.Placement, BoxOf(chip.Outline), chip.Grain.On(_stock)));
    }

    public override void LayoutLine(ReadOnlySpan<Vertex> path)
    {
        if (path.Length == 2 && path[0].Bulge == 0 && path[0].Point != path[1].Point)
            _lines.Add(new(path[0].Point, path[1].Point));
    }

    /// <summary>Borders that were laid on one piece one by one each bring its outline along: it is one piece all the same.</summary>
    public override void Stock(ReadOnlySpan<Vertex> outline)
    {
        foreach (var known in _wood)
            if (known.Span.SequenceEqual(outline))
                return;
        _wood.Add(new(outline.ToArray()));
    }

    private static Extents BoxOf(ReadOnlySpan<Vertex> outline)
    {
        var (left, right) = (double.PositiveInfinity, double.NegativeInfinity);
        var (low, high) = (left, right);
        for (var i = 0; i < outline.Length; i++)
        {
            var (point, next) = (outline[i].Point, outline[(i + 1) % outline.Length].Point);
            Include(point);
            if (outline[i].Bulge == 0)
                continue;
            // An arc of at most a half circle lies between its chord and its height.
            var rise = (next - point).Left * (-outline[i].Bulge / 2);
            Include(point + rise);
            Include(next + rise);
        }
        return new(new(left, low), new(right, high));

        void Include(Point point)
        {
            (left, right) = (Math.Min(left, point.X), Math.Max(right, point.X));
            (low, high) = (Math.Min(low, point.Y), Math.Max(high, point.Y));
        }
    }
}
