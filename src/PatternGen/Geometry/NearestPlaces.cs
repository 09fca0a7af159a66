namespace PatternGen.Geometry;

/// <summary>Where two curves come nearest to each other: a place on each, and how far they are apart.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct NearestPlaces
{
    internal NearestPlaces(Point here, Point there, double distance)
    {
        Here = here;
        There = there;
        Distance = distance;
    }

    /// <summary>The place on the curve that was asked.</summary>
    public Point Here { get; }

    /// <summary>The place on the other curve.</summary>
    public Point There { get; }

    /// <summary>Distance between the two in mm; 0 where the curves cross, and to the last digits where they touch.</summary>
    public double Distance { get; }

    /// <summary>The same as seen from the other curve.</summary>
    internal NearestPlaces Reversed() => new(There, Here, Distance);
}
