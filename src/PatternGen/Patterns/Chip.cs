using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One chip of a pattern: a piece of wood to cut away, seen from above.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Chip
{
    internal Chip(ChipId id, Contour shape, Transform placement, Contour outline)
    {
        Id = id;
        Shape = shape;
        Placement = placement;
        Outline = outline;
    }

    /// <summary>Row and place.</summary>
    public ChipId Id { get; }

    /// <summary>The outline where it lies on the wood, in mm, counter-clockwise. Corners shared with a neighbour are the same to the last digit.</summary>
    public Contour Outline { get; }

    /// <summary>The outline in the motif's own frame; all repeats of a chip share this one object.</summary>
    public Contour Shape { get; }

    /// <summary>How <see cref="Shape"/> is placed on the wood; it agrees with <see cref="Outline"/> to 1e-9 mm.</summary>
    public Transform Placement { get; }

    /// <summary>Returns the id and the extents, for messages.</summary>
    public override string ToString() => $"chip {Id}, {Outline.Extents}";
}
