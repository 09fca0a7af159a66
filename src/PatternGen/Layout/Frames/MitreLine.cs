using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The mitre at a corner, where two sides meet. Both take their points from here, so that what they share is the same to
/// the last digit.
/// </summary>
/// <remarks>Made for one drawing, by one thread.</remarks>
internal sealed class MitreLine(FrameSide side)
{
    private readonly List<double> _heights = [];

    /// <summary>Returns the point at a height over the outer edges; one as good as known already is that one.</summary>
    internal Point At(double height)
    {
        var merge = Tolerance.ForExtent(side.Length).Merge;
        foreach (var known in _heights)
            if (Math.Abs(known - height) <= merge)
                return FrameOutline.PointAt(side, known);
        _heights.Add(height);
        return FrameOutline.PointAt(side, height);
    }
}
