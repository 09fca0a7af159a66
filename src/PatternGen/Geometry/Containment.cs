namespace PatternGen.Geometry;

/// <summary>Where a point lies with respect to an area.</summary>
public enum Containment
{
    /// <summary>Outside.</summary>
    Outside,

    /// <summary>On the outline, within the tolerance.</summary>
    OnEdge,

    /// <summary>Inside.</summary>
    Inside,
}
