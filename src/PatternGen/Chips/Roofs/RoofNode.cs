using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A point where valleys end, meet, or change from one kind of curve to another.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class RoofNode
{
    internal RoofNode(Point place, double clearance, int valleyCount)
    {
        Place = place;
        Clearance = clearance;
        ValleyCount = valleyCount;
    }

    /// <summary>Where it lies.</summary>
    public Point Place { get; }

    /// <summary>Its distance from the outline in mm; 0 in a corner.</summary>
    public double Clearance { get; }

    /// <summary>Number of valleys that end here: 1 in a tip, 3 where three walls meet.</summary>
    public int ValleyCount { get; }

    /// <summary>Returns place and clearance, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Place}, {Clearance:0.######} mm clear");
}
