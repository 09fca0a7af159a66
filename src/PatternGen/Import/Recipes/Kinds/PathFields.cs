using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.Geometry.SegmentRun>;

namespace PatternGen;

/// <summary>Paths that patterns follow: open lines and closed outlines.</summary>
internal static class PathFields
{
    private static readonly RecipeField<SegmentRun, IReadOnlyList<Vertex>> Corners = F.Needed(
        "corners",
        "The corners of the path, in order.",
        new ListType<Vertex>(RecipeSizes.Corner, "a list of corners", least: 2),
        path => path.Vertices
    );

    private static readonly RecipeField<SegmentRun, bool> Closed = F.Usually(
        "closed",
        false,
        "Whether it goes on from the last corner to the first.",
        RecipeSizes.Flag,
        path => path.IsClosed
    );

    internal static readonly ObjectType<SegmentRun> Type = new(
        "path",
        "A path, open or closed.",
        new(Corners, Closed),
        given => given.Of(Closed) ? new Contour(given.Of(Corners)) : new Chain(given.Of(Corners))
    );

    /// <exception cref="PatternException">An open path is to be begun elsewhere than at its end.</exception>
    internal static void RefuseStart(SegmentRun path, double start)
    {
        if (start != 0 && !path.IsClosed)
            throw new PatternException(
                "An open path starts at its end.",
                path.PointAt(0),
                ["a closed path", "no \"startingAt\""]
            );
    }
}
