using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A point of a valley and its distance from the outline.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct ValleyPlace
{
    internal ValleyPlace(Point point, double clearance)
    {
        Point = point;
        Clearance = clearance;
    }

    /// <summary>The point, as seen from above.</summary>
    public Point Point { get; }

    /// <summary>Its distance from the outline in mm. Times the tangent of the wall angle it is the depth.</summary>
    public double Clearance { get; }
}
