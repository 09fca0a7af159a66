using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How much light a wall gets.</summary>
internal enum WallLight
{
    Dim,
    Half,
    Full,
}

/// <summary>
/// Draws the walls of chips that get some light, as flat facets from the sides to the deepest point. It is a picture
/// and no measure: a long chip has a valley where this has a point.
/// </summary>
internal sealed class SvgWallSink(SvgFile file, WallLight light, string colour, double edge)
    : SelectiveSink
{
    /// <summary>Towards the light: from the upper left, as drawings are lit.</summary>
    private static readonly Vector Light = new(-0.6, 0.8);

    /// <summary>
    /// Cosine to the light between half and full, and with the other sign between dim and none. Walls that face each
    /// other never look alike, so that the valley between them shows.
    /// </summary>
    private const double Bright = 0.4;

    /// <summary>A side that turns by up to 100 degrees is one wall; more, as of a round chip, are several.</summary>
    private const double FacetBulge = 0.466;

    private readonly Dictionary<Contour, ChipApex?> _apexes = new(
        ReferenceEqualityComparer.Instance
    );
    private bool _hasGroup;
    private bool _hasPath;

    public override void Chip(in PlacedChip chip)
    {
        if (ApexOf(chip.Shape)?.Placed(chip.Placement) is not { } apex || apex.Depth <= edge)
            return;
        var outline = chip.Outline;
        for (var i = 0; i < outline.Length; i++)
        {
            var next = outline[i + 1 < outline.Length ? i + 1 : 0].Point;
            Wall(apex, new(outline[i].Point, next, outline[i].Bulge));
        }
        if (_hasPath)
            file.Paths.End();
        _hasPath = false;
    }

    /// <summary>Closes the group, which is there only if a wall is in this light.</summary>
    internal void Finish()
    {
        if (_hasGroup)
            file.EndGroup();
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

    private void Facet(ChipApex apex, Segment side)
    {
        if (LightOn(side) != light)
            return;
        Begin();
        file.Paths.TryAddClosed([
            apex.At,
            new(Inset(side.Start, apex), side.Bulge),
            Inset(side.End, apex),
        ]);
    }

    private void Begin()
    {
        if (!_hasGroup)
            file.StartGroup(
                $"walls-in-{light.ToString().ToLowerInvariant()}-light",
                null,
                SvgStyle.Area(colour)
            );
        if (!_hasPath)
            file.Paths.Begin();
        _hasGroup = _hasPath = true;
    }

    /// <summary>Leaves the light edge of the chip as it is.</summary>
    private Point Inset(Point corner, ChipApex apex) => corner.Towards(apex.At, edge / apex.Depth);

    /// <summary>A wall slopes down to the left of its side, and so looks that way.</summary>
    private static WallLight? LightOn(Segment side)
    {
        var cosine = side.Chord.Left.Dot(Light) / side.Chord.Length;
        return cosine switch
        {
            > Bright => WallLight.Full,
            > 0 => WallLight.Half,
            > -Bright => WallLight.Dim,
            _ => null,
        };
    }
}
