using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A leaf: pieces drawn in the motif's own frame. Every repeat of the motif refers to this one object.</summary>
internal sealed class MotifNode : PatternNode
{
    internal static readonly MotifNode Empty = new();

    /// <summary>A leaf with one chip.</summary>
    internal static MotifNode Of(ChipShape chip) =>
        new()
        {
            ChipRows =
            [
                [chip],
            ],
        };

    /// <summary>The chips, row by row; a row without chips keeps its number.</summary>
    internal ChipShape[][] ChipRows { get; init; } = [];

    internal LineCut[] LineCuts { get; init; } = [];
    internal Chain[] LayoutLines { get; init; } = [];
    internal Contour[] Stock { get; init; } = [];
    internal Label[] Labels { get; init; } = [];
    internal Chain[] GridLines { get; init; } = [];

    // Asked for at every node above. Of two threads that ask first, each may make one.
    private int[]? _rowSizes;

    internal override IReadOnlyList<int> RowSizes =>
        _rowSizes ??= [.. ChipRows.Select(row => row.Length)];

    internal override long PieceCount =>
        ChipCount
        + LineCuts.Length
        + LayoutLines.Length
        + Stock.Length
        + Labels.Length
        + GridLines.Length;

    internal override long HoleCount =>
        ChipRows.Sum(row => row.Sum(shape => (long)shape.Holes.Count));

    internal override LayerSet Layers =>
        (Stock.Length > 0 ? LayerSet.Stock : 0)
        | (LayoutLines.Length > 0 ? LayerSet.LayoutLines : 0)
        | (LineCuts.Length > 0 ? LayerSet.LineCuts : 0)
        | (ChipCount > 0 ? LayerSet.Chips : 0)
        | (Labels.Length > 0 ? LayerSet.Labels : 0)
        | (GridLines.Length > 0 ? LayerSet.Grid : 0);

    /// <summary>Returns the same leaf with changed chips.</summary>
    internal MotifNode WithChips(Func<ChipShape, ChipShape> change) =>
        ChipCount == 0
            ? this
            : new()
            {
                ChipRows = [.. ChipRows.Select(row => (ChipShape[])[.. row.Select(change)])],
                LineCuts = LineCuts,
                LayoutLines = LayoutLines,
                Stock = Stock,
                Labels = Labels,
                GridLines = GridLines,
            };

    internal override PatternNode Changed(LeafChange change) => change.Of(this);

    internal override Action Bind(IPatternSink sink, LayerSet layers) => () => Emit(sink, layers);

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink) =>
        [(this, sink)];

    // Bits are tested by hand: unoptimised, HasFlag makes garbage, and this runs for every repeat.
    private void Emit(IPatternSink sink, LayerSet layers)
    {
        if ((layers & LayerSet.Stock) != 0)
            for (var i = 0; i < Stock.Length; i++)
                sink.Stock(Stock[i].Span);
        if ((layers & LayerSet.LayoutLines) != 0)
            for (var i = 0; i < LayoutLines.Length; i++)
                sink.LayoutLine(LayoutLines[i].Span);
        if ((layers & LayerSet.LineCuts) != 0)
            for (var i = 0; i < LineCuts.Length; i++)
            {
                var cut = LineCuts[i];
                sink.LineCut(cut.Path.Span, cut.Width, cut.Profile);
            }
        if ((layers & LayerSet.Chips) != 0)
            for (var row = 0; row < ChipRows.Length; row++)
            for (var i = 0; i < ChipRows[row].Length; i++)
                sink.Chip(new(new(row, i), ChipRows[row][i]));
        if ((layers & LayerSet.Labels) != 0)
            for (var i = 0; i < Labels.Length; i++)
                sink.Label(Labels[i]);
        if ((layers & LayerSet.Grid) != 0)
            for (var i = 0; i < GridLines.Length; i++)
                sink.GridLine(GridLines[i].Span);
    }

    internal override Extents? Bounds(Transform transform, LayerSet layers)
    {
        Extents? bounds = null;
        if (layers.HasFlag(LayerSet.Stock))
            bounds = Union(bounds, BoundsOf(Stock, transform));
        if (layers.HasFlag(LayerSet.Chips))
            foreach (var row in ChipRows)
                bounds = Union(bounds, BoundsOf(row.Select(shape => shape.Outline), transform));
        if (layers.HasFlag(LayerSet.LayoutLines))
            bounds = Union(bounds, BoundsOf(LayoutLines, transform));
        if (layers.HasFlag(LayerSet.Grid))
            bounds = Union(bounds, BoundsOf(GridLines, transform));
        if (layers.HasFlag(LayerSet.LineCuts))
            foreach (var cut in LineCuts)
                bounds = Union(bounds, cut.Path.Transformed(transform).Extents);
        return bounds;
    }

    private static Extents? BoundsOf(IEnumerable<Contour> contours, Transform transform)
    {
        Extents? bounds = null;
        foreach (var contour in contours)
            bounds = Union(bounds, contour.Transformed(transform).Extents);
        return bounds;
    }

    private static Extents? BoundsOf(Chain[] chains, Transform transform)
    {
        Extents? bounds = null;
        foreach (var chain in chains)
            bounds = Union(bounds, chain.Transformed(transform).Extents);
        return bounds;
    }
}
