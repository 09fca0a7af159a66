namespace PatternGen;

/// <summary>How a rosette is made.</summary>
public enum RosetteFamily
{
    /// <summary>Two-sided petals from the centre to the rim.</summary>
    Petals,

    /// <summary>Several sets of petals, turned against each other.</summary>
    Overlaid,

    /// <summary>A small round of petals, and a large one that shows round it.</summary>
    TwoLevel,

    /// <summary>Two-sided petals between two circles.</summary>
    PetalRing,

    /// <summary>Petals, and leaves along the rim from tip to tip.</summary>
    Wreathed,

    /// <summary>Petals within a rim of arcs that bulge out.</summary>
    Scalloped,

    /// <summary>A star that joins every so many points of the rim.</summary>
    Star,

    /// <summary>A star whose points are halved by lines from the centre.</summary>
    SplitStar,

    /// <summary>Triangles from an inner circle to the rim.</summary>
    Rays,

    /// <summary>Diamonds, tip to tip, between two circles.</summary>
    Diamonds,

    /// <summary>Curved radii from the centre to the rim.</summary>
    Whirl,

    /// <summary>Equal circles that overlap all round.</summary>
    OverlappingCircles,

    /// <summary>Equal circles that touch all round.</summary>
    TouchingCircles,

    /// <summary>Part of a rosette of petals, between two radii.</summary>
    Fan,

    /// <summary>A rosette in the plain centre of another.</summary>
    Nested,

    /// <summary>A rosette with a polygon round it.</summary>
    WithinPolygon,
}
