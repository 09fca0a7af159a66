using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One chip of a pattern: a piece of wood to cut away, seen from above.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Chip
{
    private readonly ChipShape _shape;

    internal Chip(in PlacedChip chip)
    {
        // Inside the tree rows and places are counted from 0.
        Id = new(chip.Id.Row + 1, chip.Id.Index + 1);
        _shape = chip.Shape;
        Placement = chip.Placement;
        Outline = chip.ToOutline();
        Holes = chip.ToHoles();
    }

    /// <summary>Row and place.</summary>
    public ChipId Id { get; }

    /// <summary>The outline where it lies on the wood, in mm, counter-clockwise. Corners shared with a neighbour are the same to the last digit.</summary>
    public Contour Outline { get; }

    /// <summary>
    /// Where the ground stays standing inside the chip, as it lies on the wood, in mm, clockwise; empty for nearly all
    /// chips. Holes may touch the outline and each other in points.
    /// </summary>
    public IReadOnlyList<Contour> Holes { get; }

    /// <summary>The outline in the motif's own frame; all repeats of a chip share this one object.</summary>
    public Contour Shape => _shape.Outline;

    /// <summary>The holes in the motif's own frame, in the order of <see cref="Holes"/>; all repeats of a chip share these objects.</summary>
    public IReadOnlyList<Contour> ShapeHoles => _shape.Holes;

    /// <summary>How <see cref="Shape"/> and <see cref="ShapeHoles"/> are placed on the wood; they agree with <see cref="Outline"/> and <see cref="Holes"/> to 1e-9 mm.</summary>
    public Transform Placement { get; }

    /// <summary>Returns the id and the extents, for messages.</summary>
    public override string ToString() => $"chip {Id}, {Outline.Extents}";
}
