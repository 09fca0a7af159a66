using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Moves leaves out of the way of their stem.</summary>
/// <param name="stem">The outline of the stem.</param>
/// <param name="leaf">The leaf in its own frame.</param>
/// <param name="gap">Wood left between them in mm.</param>
internal sealed class LeafClearing(Contour stem, Leaf leaf, double gap)
{
    /// <summary>Halvings of the search for the place nearest to the stem: enough for a part in a hundred thousand.</summary>
    private const int SearchSteps = 16;

    private readonly (Segment Edge, Extents Reach)[] _stem =
    [
        .. stem.Segments.Select(edge => (edge, edge.Extents.Grown(gap))),
    ];

    private readonly Segment[] _leaf = leaf.Outline.ToSegments();

    /// <summary>Returns the placement moved along the leaf, away from its stalk, as little as leaves the gap.</summary>
    /// <remarks>A leaf that half its length does not bring clear, deep in a bend, stays there: the inspection tells.</remarks>
    internal Transform Clear(Transform placement)
    {
        var along = placement.Apply(new Vector(1, 0)).Unit();
        var (near, far) = (0.0, gap + leaf.Length * placement.Scale / 2);
        for (var step = 0; step < SearchSteps; step++)
        {
            var middle = (near + far) / 2;
            if (IsClear(placement.Then(Transform.Move(along * middle))))
                far = middle;
            else
                near = middle;
        }
        return placement.Then(Transform.Move(along * far));
    }

    private bool IsClear(Transform placement)
    {
        foreach (var side in _leaf)
        {
            var placed = side.Transformed(placement);
            var extents = placed.Extents;
            foreach (var (edge, reach) in _stem)
                if (reach.Touches(extents) && placed.NearestTo(edge).Distance < gap)
                    return false;
        }
        return true;
    }
}
