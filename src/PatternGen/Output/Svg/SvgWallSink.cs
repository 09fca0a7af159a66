using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// Draws the walls of chips as flat facets from the sides to the deepest point, each as light as it faces the light.
/// It is a picture and no measure: a long chip has a valley where this has a point. A chip without a point that sees
/// all of its sides, such as one with a hole, is left as dark as its bottom.
/// </summary>
/// <param name="file">The file.</param>
/// <param name="edge">Width in mm along the sides that is left free.</param>
internal sealed class SvgWallSink(SvgFile file, double edge) : SelectiveSink
{
    /// <summary>A side that turns by up to 30 degrees is one facet: tan(30° / 4).</summary>
    private const double FacetBulge = 0.1317;

    private readonly Dictionary<Contour, ChipApex?> _apexes = new(
        ReferenceEqualityComparer.Instance
    );

    public override void Chip(in PlacedChip chip)
    {
        if (chip.HasHoles)
            return;
        var shared = ApexOf(chip.Shape.Outline);
        if (shared?.Placed(chip.Placement) is not { } apex || apex.Depth <= edge)
            return;
        var outline = chip.Outline;
        for (var i = 0; i < outline.Length; i++)
        {
            var next = outline[i + 1 < outline.Length ? i + 1 : 0].Point;
            Wall(apex, new(outline[i].Point, next, outline[i].Bulge));
        }
    }

    private ChipApex? ApexOf(Contour shape)
    {
        if (!_apexes.TryGetValue(shape, out var apex))
            _apexes[shape] = apex = ChipApex.Of(shape);
        return apex;
    }

    private void Wall(ChipApex apex, Segment side)
    {
        if (Math.Abs(side.Bulge) <= FacetBulge)
        {
            Facet(apex, side);
            return;
        }
        var half = side.PartBulge(0.5);
        Wall(apex, new(side.Start, side.Middle, half));
        Wall(apex, new(side.Middle, side.End, half));
    }

    private void Facet(ChipApex apex, Segment side) =>
        file.Paths.TryClosed(
            [apex.At, new(Inset(side.Start, apex), side.Bulge), Inset(side.End, apex)],
            WallTones.Of(side)
        );

    /// <summary>Leaves the light edge of the chip as it is.</summary>
    private Point Inset(Point corner, ChipApex apex) => corner.Towards(apex.At, edge / apex.Depth);
}
