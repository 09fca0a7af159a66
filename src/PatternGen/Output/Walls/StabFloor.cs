using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The sloping floor of a stab-cut chip, in the frame of the chip's shape.</summary>
internal sealed class StabFloor
{
    /// <summary>Width of an upright wall at the apex as it is drawn, as a share of the chip's height: as eyes see it that do not stand straight above.</summary>
    private const double UprightShare = 0.06;

    private readonly Contour _outline;
    private readonly int _apex;

    private StabFloor(Contour outline, int apex)
    {
        (_outline, _apex) = (outline, apex);
        Base = outline.At((apex + 1) % outline.Count);
        Downhill = Base.Chord.Unit().Left;
        Height = Downhill.Dot(outline.Vertices[apex].Point - Base.Start);
    }

    /// <summary>The side that the floor slopes down from.</summary>
    internal Segment Base { get; }

    /// <summary>The direction in which it goes down, of length 1.</summary>
    internal Vector Downhill { get; }

    /// <summary>Distance of the apex from the base in mm.</summary>
    internal double Height { get; }

    /// <summary>Returns the floor of a chip that is stabbed; null if its walls lean.</summary>
    internal static StabFloor? Of(ChipShape shape) =>
        shape.Cut.Apex is { } apex ? new(shape.Outline, apex) : null;

    /// <summary>The angle between floor and surface.</summary>
    /// <param name="cut">The chip's cut, in the same frame.</param>
    internal Angle Slope(ChipCut cut) =>
        cut.Slope ?? Angle.FromRadians(Math.Atan2(cut.Depth ?? 0, Height));

    /// <summary>The floor as one facet, or a few if what is left free parts it.</summary>
    /// <param name="free">Width along the sides that is left free, in mm.</param>
    internal IReadOnlyList<WallFacet> Facets(double free) =>
        [
            .. new Region(_outline)
                .Inset(free)
                .Contours.Select(ring => new WallFacet(ring.Span.ToArray(), Downhill)),
        ];

    /// <summary>The upright walls, as slivers that widen towards the apex: seen from straight above they would be lines.</summary>
    internal IReadOnlyList<WallFacet> Uprights() =>
        [Upright(_apex, startsDeep: true), Upright((_apex + 2) % 3, startsDeep: false)];

    private WallFacet Upright(int side, bool startsDeep)
    {
        var wall = _outline.At(side);
        var inward = wall.NormalAt(startsDeep ? 0 : wall.Length);
        var foot = (startsDeep ? wall.Start : wall.End) + inward * (UprightShare * Height);
        Vertex[] ring = startsDeep
            ? [new(wall.Start, wall.Bulge), new(wall.End, -wall.Bulge), foot]
            : [new(wall.Start, wall.Bulge), wall.End, new(foot, -wall.Bulge)];
        return new(ring, wall.NormalAt(wall.Length / 2));
    }

    /// <summary>The part of the floor that lies deeper than a share of the depth.</summary>
    /// <param name="share">0 is the surface, 1 the apex.</param>
    internal Region Below(double share)
    {
        var reach = 2 * (_outline.Extents.Width + _outline.Extents.Height);
        var along = Base.Chord.Unit();
        var start = Base.Start + Downhill * (share * Height) - along * reach;
        var half = Contour.Polygon(
            start,
            start + along * (2 * reach),
            start + along * (2 * reach) + Downhill * reach,
            start + Downhill * reach
        );
        return new Region(_outline).Intersection(new Region(half));
    }
}
