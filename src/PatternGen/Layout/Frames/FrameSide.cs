using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A side of a frame in its own frame: x runs along its outer edge from its first corner, y points into the frame.</summary>
/// <param name="Length">Length of the outer edge in mm.</param>
/// <param name="Placement">Where the side lies; it is not mirrored.</param>
/// <param name="First">Cotangent of half the inside angle at the first corner: the mitre there leaves the side by so much for each mm inwards.</param>
/// <param name="Last">The same at the other end.</param>
internal sealed record FrameSide(double Length, Transform Placement, double First, double Last)
{
    /// <summary>Where the side begins at a height over its outer edge: on the mitre.</summary>
    internal double StartAt(double height) => height * First;

    /// <summary>Length between the mitres at a height over the outer edge; negative if they have met before.</summary>
    internal double LengthAt(double height) => Length - height * First - height * Last;

    /// <summary>
    /// How far from the first corner, along the mitre, a line lies that goes round it with an arc: at a sharp corner its
    /// height over the sine of half the inside angle.
    /// </summary>
    /// <param name="height">Distance of the line from the outer edge.</param>
    /// <param name="radius">Radius of the corner at the outer edge; lines farther in than it are sharp where the corner points out.</param>
    internal double AlongMitre(double height, double radius)
    {
        // One over the sine, from the cotangent.
        var stretch = double.Hypot(1, First);
        if (First <= 0)
            return radius * (1 - stretch) + height;
        return radius > height ? radius * (stretch - 1) + height : height * stretch;
    }

    /// <summary>The same side seen in a mirror: its last corner is the first.</summary>
    internal Transform Mirrored => Transform.MirrorLeftRight(Length / 2);
}
