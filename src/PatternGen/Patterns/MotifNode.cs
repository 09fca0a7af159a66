using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A leaf: pieces drawn in the motif's own frame. Every repeat of the motif refers to this one object.</summary>
internal sealed class MotifNode : PatternNode
{
    internal static readonly MotifNode Empty = new();

    internal IReadOnlyList<Contour> Chips { get; init; } = [];
    internal IReadOnlyList<LineCut> LineCuts { get; init; } = [];
    internal IReadOnlyList<Chain> LayoutLines { get; init; } = [];
    internal IReadOnlyList<Contour> Stock { get; init; } = [];
    internal IReadOnlyList<Label> Labels { get; init; } = [];

    /// <summary>All chips of a leaf make one row.</summary>
    internal override IReadOnlyList<int> RowSizes => Chips.Count > 0 ? [Chips.Count] : [];

    internal override Action Bind(IPatternSink sink) => () => Emit(sink);

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink) =>
        [(this, sink)];

    private void Emit(IPatternSink sink)
    {
        foreach (var outline in Stock)
            sink.Stock(outline.Span);
        foreach (var line in LayoutLines)
            sink.LayoutLine(line.Span);
        foreach (var cut in LineCuts)
            sink.LineCut(cut.Path.Span, cut.Width);
        for (var i = 0; i < Chips.Count; i++)
            sink.Chip(new(new(0, i), Chips[i].Span, Chips[i], Transform.Identity));
        foreach (var label in Labels)
            sink.Label(label);
    }

    internal override Extents? Bounds(Transform transform, LayerSet layers)
    {
        Extents? bounds = null;
        if (layers.HasFlag(LayerSet.Stock))
            bounds = Union(bounds, BoundsOf(Stock, transform));
        if (layers.HasFlag(LayerSet.Chips))
            bounds = Union(bounds, BoundsOf(Chips, transform));
        if (layers.HasFlag(LayerSet.LayoutLines))
            bounds = Union(bounds, BoundsOf(LayoutLines, transform));
        if (layers.HasFlag(LayerSet.LineCuts))
            bounds = Union(bounds, BoundsOf(LineCuts.Select(cut => cut.Path), transform));
        return bounds;
    }

    private static Extents? BoundsOf(IEnumerable<Contour> contours, Transform transform) =>
        contours.Aggregate(
            (Extents?)null,
            (bounds, contour) => Union(bounds, contour.Transformed(transform).Extents)
        );

    private static Extents? BoundsOf(IEnumerable<Chain> chains, Transform transform) =>
        chains.Aggregate(
            (Extents?)null,
            (bounds, chain) => Union(bounds, chain.Transformed(transform).Extents)
        );
}
