namespace PatternGen;

/// <summary>What counts as the middle of a field.</summary>
public enum FieldMiddle
{
    /// <summary>The middle of the smallest upright rectangle that holds the outline. The default.</summary>
    Extents,

    /// <summary>The outline's centre of gravity, holes taken off.</summary>
    Centroid,
}
