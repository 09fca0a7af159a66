using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A point of a chip's side and the point of the valley below it.</summary>
/// <param name="Edge">The point of the side.</param>
/// <param name="Valley">The point of the valley.</param>
/// <param name="Depth">Distance in mm from the one to the other, as seen from above.</param>
/// <param name="Facing">Where the wall looks, a unit vector.</param>
internal readonly record struct WallFoot(Point Edge, Point Valley, double Depth, Vector Facing)
{
    /// <summary>The point of the wall so far from the side, or the valley if that is nearer.</summary>
    internal Point Inset(double edge) => Depth > edge ? Edge.Towards(Valley, edge / Depth) : Valley;
}
