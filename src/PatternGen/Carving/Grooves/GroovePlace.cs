using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A place that the point of a bit passes: where, as seen from above, and how deep.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct GroovePlace
{
    internal GroovePlace(Point point, double depth) => (Point, Depth) = (point, depth);

    /// <summary>The place as seen from above, in mm.</summary>
    public Point Point { get; }

    /// <summary>Depth in mm below the surface, 0 or more. In a file it is z = -Depth, so that the surface is at 0.</summary>
    public double Depth { get; }

    /// <summary>Returns place and depth, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Point}, {Depth:0.######} mm deep");
}
