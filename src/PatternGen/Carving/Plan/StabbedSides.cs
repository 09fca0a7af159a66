using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The cuts of a stab-cut chip: two stabs from the apex along the upright walls, and the slice from the base.</summary>
/// <remarks>
/// The knife is held upright, its point on the apex, pressed down and drawn away along one side, then the other; then the
/// chip is sliced out: Edwin W. Foster, Carpentry and Woodwork (1911), ch. XI.
/// </remarks>
internal static class StabbedSides
{
    /// <summary>Depths are in units of the depth at the apex.</summary>
    internal static ShapeCut[] Of(Contour outline, int apex)
    {
        var cuts = new ShapeCut[outline.Count];
        for (var i = 0; i < cuts.Length; i++)
        {
            var side = Chain.Of(outline.At(i));
            var point = outline.Vertices[apex].Point;
            cuts[i] =
                i == apex ? Stab(side, i, point, isReversed: false)
                : i == (apex + outline.Count - 1) % outline.Count
                    ? Stab(side.Reversed(), i, point, isReversed: true)
                : new()
                {
                    Kind = CutKind.Slice,
                    Path = side,
                    Side = i,
                    Deepest = point,
                    DeepestAlong = side.Nearest(point).Length,
                    Depth = 1,
                    IsFloor = true,
                };
        }
        return cuts;
    }

    private static ShapeCut Stab(Chain path, int side, Point apex, bool isReversed) =>
        new()
        {
            Kind = CutKind.Stab,
            Path = path,
            HasChipOnRight = isReversed,
            Side = side,
            Deepest = apex,
            DeepestAlong = 0,
            Depth = 1,
            StartDepth = 1,
        };
}
