using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A straight line down a wall, from the outline to the valley, as seen from above.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct WallFall
{
    internal WallFall(Point edge, Vector inward, double length)
    {
        Edge = edge;
        Inward = inward;
        Length = length;
    }

    /// <summary>Where it starts, on the outline.</summary>
    public Point Edge { get; }

    /// <summary>The direction into the chip, of length 1, in which it goes down: where the wall faces.</summary>
    public Vector Inward { get; }

    /// <summary>Distance in mm from the outline to the valley, as seen from above.</summary>
    public double Length { get; }

    /// <summary>The point of the valley where it ends.</summary>
    public Point Valley => Edge + Inward * Length;
}
