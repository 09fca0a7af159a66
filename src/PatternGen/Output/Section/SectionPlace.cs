namespace PatternGen;

/// <summary>A corner of the carved surface as a section shows it.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct SectionPlace
{
    internal SectionPlace(double along, double depth)
    {
        Along = along;
        Depth = depth;
    }

    /// <summary>Distance in mm from the start of the section.</summary>
    public double Along { get; }

    /// <summary>Depth in mm below the surface, 0 where nothing is cut.</summary>
    public double Depth { get; }
}
