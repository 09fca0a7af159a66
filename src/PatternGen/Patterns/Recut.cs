using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Gives the chips of a pattern another cut, each shape once, so that repeats go on sharing it.</summary>
internal sealed class Recut(Func<Contour, ChipCut> choose)
{
    private readonly Dictionary<ChipShape, ChipShape> _done = new(
        ReferenceEqualityComparer.Instance
    );

    private readonly List<ChipCut> _chosen = [];

    /// <summary>The cuts so far, one for each shape, in the order in which the tree holds them.</summary>
    internal IReadOnlyList<ChipCut> Chosen => _chosen;

    /// <exception cref="PatternException">A chip can't be stabbed in the chosen way.</exception>
    internal PatternNode Of(PatternNode root) =>
        new LeafChange(leaf => leaf.WithChips(Of)).Of(root);

    private ChipShape Of(ChipShape shape)
    {
        if (!_done.TryGetValue(shape, out var recut))
            _done[shape] = recut = shape.WithCut(CutOf(shape));
        return recut;
    }

    private ChipCut CutOf(ChipShape shape)
    {
        var cut =
            choose(shape.Outline)
            ?? throw new ArgumentException(
                $"No cut was chosen for the chip at {shape.Outline.Vertices[0].Point}; ChipCut.Walls is the usual one."
            );
        cut.RefuseUnfit(shape.Outline, shape.Holes.Count);
        _chosen.Add(cut);
        return cut;
    }
}
