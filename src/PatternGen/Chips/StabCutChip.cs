using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// A chip that is stabbed and sliced: two upright walls that meet at its apex, where it is deepest, and a floor that slopes
/// up to the base, the side opposite.
/// </summary>
/// <remarks>
/// A triangle with a base of 6 mm, 4 mm high and 3 mm deep at the apex holds 12 mm³: a third of area times depth, as any pyramid. The upright
/// walls may be curved. Immutable and safe to share between threads.
/// </remarks>
public sealed class StabCutChip : ChipSolid
{
    private readonly Segment _base;
    private readonly Vector _inward;
    private readonly double _height;

    /// <param name="outline">The outline.</param>
    /// <param name="apex">The corner where it is deepest.</param>
    /// <param name="depth">The depth there, for the distance in mm from the base.</param>
    internal StabCutChip(Contour outline, int apex, Func<double, double> depth)
    {
        if (outline.Count != 3)
            throw new ArgumentException(
                $"A stab-cut chip has three sides, but the outline has {outline.Count}.",
                nameof(outline)
            );
        if (outline.SignedArea <= 0)
            throw new ArgumentException(
                "A stab-cut chip has an outline that runs counter-clockwise and encloses an area.",
                nameof(outline)
            );
        Guard.Within(apex, 0, 2);
        _base = outline.At((apex + 1) % 3);
        if (!_base.IsLine)
            throw new ArgumentException(
                $"The side opposite the apex, {_base}, must be straight: the floor slopes up to it.",
                nameof(outline)
            );
        (Outline, Apex) = (outline, apex);
        _inward = _base.Chord.Unit().Left;
        _height = HeightOf(Deepest);
        Depth = depth(_height);
        RefuseOverBase();
    }

    /// <summary>The outline, counter-clockwise.</summary>
    public Contour Outline { get; }

    /// <summary>The corner where the chip is deepest, from 0 to 2.</summary>
    public int Apex { get; }

    /// <summary>The angle between the floor and the surface.</summary>
    public Angle FloorSlope => Angle.FromRadians(Math.Atan2(Depth, _height));

    /// <inheritdoc/>
    public override double Depth { get; }

    /// <summary>The apex, as seen from above.</summary>
    public override Point Deepest => Outline.Vertices[Apex].Point;

    /// <inheritdoc/>
    public override double Area => Outline.Area;

    /// <inheritdoc/>
    public override double Volume => Area * FloorDepthAt(Contour.CentroidOf([Outline]));

    /// <inheritdoc/>
    public override double SurfaceArea =>
        Area / FloorSlope.Cos()
        + UprightArea(Outline.At(Apex))
        + UprightArea(Outline.At((Apex + 2) % 3));

    /// <inheritdoc/>
    public override double DepthAt(Point point) =>
        Winding.Of(Outline, Guard.Place(point)) > 0 ? FloorDepthAt(point) : 0;

    /// <summary>How far a point lies from the base, in mm.</summary>
    private double HeightOf(Point point) => _inward.Dot(point - _base.Start);

    /// <summary>The depth of the floor's plane at a point of the outline or inside it.</summary>
    internal double FloorDepthAt(Point point) => Depth * HeightOf(point) / _height;

    /// <summary>Along an upright wall the depth changes as the height over the base does; along an arc it is that of the arc's centre of gravity.</summary>
    private double UprightArea(Segment wall)
    {
        var sweep = wall.Sweep.Radians;
        // The centre of gravity of an arc lies R sin(θ/2)/(θ/2) from its centre.
        var middle = wall.IsLine
            ? wall.Middle
            : wall.Centre + (wall.Middle - wall.Centre) * (Math.Sin(sweep / 2) / (sweep / 2));
        return wall.Length * FloorDepthAt(middle);
    }

    private void RefuseOverBase()
    {
        foreach (var wall in new[] { Outline.At(Apex), Outline.At((Apex + 2) % 3) })
        {
            if (wall.IsLine)
                continue;
            // Lowest where the wall runs along the base, if it does.
            var lowest = wall.Centre - _inward * wall.Radius;
            var isPast = wall.DistanceTo(lowest) <= Outline.Tolerance.Merge;
            if (isPast && HeightOf(lowest) < -Outline.Tolerance.Merge)
                throw new PatternException(
                    "A wall of a stab-cut chip reaches over the base, where the floor would rise out of the wood.",
                    lowest,
                    ["walls that bulge less", "the wider side as the base"]
                );
        }
    }
}
