namespace PatternGen.Geometry;

/// <summary>A direction with a length, in millimetres; y points up.</summary>
/// <param name="x">The part along x.</param>
/// <param name="y">The part along y.</param>
public readonly struct Vector(double x, double y)
{
    /// <summary>Gets the part along x.</summary>
    public double X { get; } = x;

    /// <summary>Gets the part along y.</summary>
    public double Y { get; } = y;
}
