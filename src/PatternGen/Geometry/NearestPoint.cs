namespace PatternGen.Geometry;

/// <summary>The point of a run that is nearest to a given point.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct NearestPoint
{
    internal NearestPoint(Point point, double distance, double length, int segment)
    {
        Point = point;
        Distance = distance;
        Length = length;
        Segment = segment;
    }

    /// <summary>The nearest point.</summary>
    public Point Point { get; }

    /// <summary>Its distance in mm from the given point.</summary>
    public double Distance { get; }

    /// <summary>Its distance in mm from the start, along the run.</summary>
    public double Length { get; }

    /// <summary>The place of its segment in the run, from 0.</summary>
    public int Segment { get; }
}
