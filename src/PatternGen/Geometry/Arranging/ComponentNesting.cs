namespace PatternGen.Geometry;

/// <summary>Tells in which face of the others each component lies.</summary>
/// <remarks>
/// A walk with a face on its left winds once round each point inside it. Of all walks of other components that wind round a
/// point of this one, the one with the least area is the innermost, since components do not cross.
/// </remarks>
internal static class ComponentNesting
{
    /// <summary>The face that holds each component; the outer one, 0, for all if there is but one.</summary>
    internal static int[] FacesOf(Arrangement arrangement, FaceWalks walks, int[] faceOfWalk)
    {
        var faces = new int[walks.RoundComponent.Length];
        if (faces.Length < 2)
            return faces;
        var index = new WalkIndex(arrangement, walks);
        for (var component = 0; component < faces.Length; component++)
        {
            var first = walks.FirstOf(walks.RoundComponent[component]);
            var point = arrangement.PointOf(arrangement.OriginOf(first));
            var walk = index.InnermostRound(point, except: component);
            faces[component] = walk < 0 ? 0 : faceOfWalk[walk];
        }
        return faces;
    }
}
