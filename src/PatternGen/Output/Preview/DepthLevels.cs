using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The areas of chips that lie deeper than a level, exact: parallels of the outline, made once for all repeats.</summary>
internal sealed class DepthLevels
{
    // As single floats: the same level at scales that differ in the last digits of a double.
    private readonly Dictionary<(ChipShape, float), IReadOnlyList<Contour>> _known = [];

    /// <summary>Returns the rings of what is cut deeper than a depth, as they lie on the wood.</summary>
    /// <param name="chip">The chip.</param>
    /// <param name="solid">The chip as a solid.</param>
    /// <param name="depth">In mm, 0 or more.</param>
    internal IEnumerable<Contour> Below(in PlacedChip chip, ChipSolid solid, double depth)
    {
        var share = depth / solid.Depth;
        return share < 1 ? Rings(chip.Shape, share, chip.Placement) : [];
    }

    private IEnumerable<Contour> Rings(ChipShape shape, double share, Transform placement)
    {
        if (!_known.TryGetValue((shape, (float)share), out var rings))
            _known[(shape, (float)share)] = rings = Make(shape, share);
        return rings.Select(ring => ring.Transformed(placement));
    }

    private static IReadOnlyList<Contour> Make(ChipShape shape, double share)
    {
        if (StabFloor.Of(shape) is { } floor)
            return floor.Below(share).Contours;
        return new Region([shape.Outline, .. shape.Holes])
            .Inset(share * shape.Roof.Clearance)
            .Contours;
    }
}
