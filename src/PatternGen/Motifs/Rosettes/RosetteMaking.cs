namespace PatternGen;

/// <summary>Which method made a rosette and what it was asked for, so that a recipe can ask for the same; null where nothing was.</summary>
/// <param name="Family">The method.</param>
/// <param name="Count">Number of petals, rays or circles; of one round or in another, that one's.</param>
/// <param name="Radius">Radius asked for in mm; of one round or in another, that one's.</param>
internal sealed record RosetteMaking(RosetteFamily Family, int Count, double Radius)
{
    internal double? Centre { get; init; }
    internal double? Inner { get; init; }
    internal double? ArcRadius { get; init; }
    internal double Ridge { get; init; }
    internal int Sets { get; init; }
    internal int Every { get; init; } = 1;
    internal PetalCrossing Crossing { get; init; }
    internal WhirlTurn Turn { get; init; }
    internal double FromDegrees { get; init; }
    internal double ToDegrees { get; init; }
    internal int Sides { get; init; }
    internal double Gap { get; init; }

    /// <summary>The rosette round another, or the one within a polygon.</summary>
    internal Rosette? Outer { get; init; }

    /// <summary>The rosette within another.</summary>
    internal Rosette? Inside { get; init; }
}
