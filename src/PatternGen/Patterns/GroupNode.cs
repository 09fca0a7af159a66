using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Several nodes drawn one after the other.</summary>
internal sealed class GroupNode : PatternNode
{
    private readonly PatternNode[] _children;
    private readonly bool _sameRows;
    private readonly int[] _rowSizes;

    private GroupNode(PatternNode[] children, bool sameRows)
    {
        _children = children;
        _sameRows = sameRows;
        Layers = children.Aggregate((LayerSet)0, (layers, child) => layers | child.Layers);
        _rowSizes = sameRows ? AddUp(children) : [.. children.SelectMany(child => child.RowSizes)];
        PieceCount = children.Sum(child => child.PieceCount);
        HoleCount = children.Sum(child => child.HoleCount);
        RefuseTooMany(PieceCount);
    }

    internal override IReadOnlyList<int> RowSizes => _rowSizes;

    /// <summary>Returns the nodes together; the rows of each follow those of the one before.</summary>
    internal static PatternNode Of(params IEnumerable<PatternNode> children) =>
        Simplest([.. children], sameRows: false);

    /// <summary>Returns the nodes as parts of the same rows: row 1 of the second goes on where row 1 of the first ends.</summary>
    internal static PatternNode InSameRows(params IEnumerable<PatternNode> children) =>
        Simplest([.. children], sameRows: true);

    internal override long PieceCount { get; }

    internal override long HoleCount { get; }

    internal override LayerSet Layers { get; }

    internal override Action Bind(IPatternSink sink, LayerSet layers)
    {
        var draws = Renumbered(sink)
            .Where(part => (part.Child.Layers & layers) != 0)
            .Select(part => part.Child.Bind(part.Sink, layers))
            .ToArray();
        return () =>
        {
            foreach (var draw in draws)
                draw();
        };
    }

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink) =>
        Renumbered(sink).SelectMany(part => part.Child.Leaves(part.Sink));

    internal override Extents? Bounds(Transform outer, LayerSet layers)
    {
        Extents? bounds = null;
        foreach (var child in _children)
            bounds = Union(bounds, child.Bounds(outer, layers));
        return bounds;
    }

    internal override PatternNode Changed(LeafChange change) =>
        new GroupNode([.. _children.Select(change.Of)], _sameRows);

    /// <summary>Each child with the sink that numbers its chips on from those of the children before.</summary>
    private IEnumerable<(PatternNode Child, IPatternSink Sink)> Renumbered(IPatternSink sink)
    {
        var firstRow = 0;
        var placed = new int[_rowSizes.Length];
        foreach (var child in _children)
        {
            // Only rows that go on need numbers of their own; a copy for each of many children would grow with their square.
            yield return (child, new Sink(sink, firstRow, _sameRows ? [.. placed] : placed));
            if (_sameRows)
                for (var row = 0; row < child.RowSizes.Count; row++)
                    placed[row] += child.RowSizes[row];
            else
                firstRow += child.RowSizes.Count;
        }
    }

    private static PatternNode Simplest(PatternNode[] children, bool sameRows) =>
        children.Length switch
        {
            0 => MotifNode.Empty,
            1 => children[0],
            _ => new GroupNode(children, sameRows),
        };

    private static int[] AddUp(PatternNode[] children)
    {
        var sizes = new int[children.Max(child => child.RowSizes.Count)];
        foreach (var child in children)
            for (var row = 0; row < child.RowSizes.Count; row++)
                sizes[row] += child.RowSizes[row];
        return sizes;
    }

    /// <summary>Renumbers chips.</summary>
    private sealed class Sink(IPatternSink target, int firstRow, int[] offsets)
        : ForwardingSink(target)
    {
        public override void Chip(in PlacedChip chip) =>
            Target.Chip(
                chip.Renumbered(new(chip.Id.Row + firstRow, chip.Id.Index + offsets[chip.Id.Row]))
            );
    }
}
