using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Gives the chips of a pattern another cut, each shape once, so that repeats go on sharing it.</summary>
internal sealed class Recut(Func<Contour, ChipCut> choose)
{
    private readonly Dictionary<ChipShape, ChipShape> _done = new(
        ReferenceEqualityComparer.Instance
    );

    /// <exception cref="PatternException">The apex is a corner that a chip has not.</exception>
    internal PatternNode Of(PatternNode root) =>
        new LeafChange(leaf => leaf.WithChips(Of)).Of(root);

    private ChipShape Of(ChipShape shape)
    {
        if (!_done.TryGetValue(shape, out var recut))
            _done[shape] = recut = shape.WithCut(CutOf(shape.Outline));
        return recut;
    }

    private ChipCut CutOf(Contour outline)
    {
        var cut =
            choose(outline)
            ?? throw new ArgumentException(
                $"No cut was chosen for the chip at {outline.Vertices[0].Point}; ChipCut.Walls is the usual one."
            );
        if (cut.Apex >= outline.Count)
            throw new PatternException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"A chip of {outline.Count} sides can't be stabbed at corner {cut.Apex}, since its corners are numbered 0 to {outline.Count - 1}."
                ),
                outline.Vertices[0].Point,
                [$"a corner from 0 to {outline.Count - 1}", "a cut chosen for each shape"]
            );
        return cut;
    }
}
