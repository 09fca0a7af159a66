using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A side of a ring, or a piece of one that another ring touches.</summary>
internal readonly record struct TouchedSide(int Ring, int Index, Segment Segment);

/// <summary>
/// Rings that may touch: sides are cut at the corners of other rings that lie on them, and corners that count as one point are one, so
/// that <see cref="RoofSites"/> can see which side the chip's edge follows there.
/// </summary>
internal sealed class TouchedRings
{
    private readonly double _merge;
    private readonly List<Point> _corners = [];
    private readonly List<TouchedSide> _sides = [];

    internal TouchedRings(IReadOnlyList<Contour> rings, double merge)
    {
        _merge = merge;
        foreach (var corner in rings.SelectMany(ring => ring.Vertices))
            if (_corners.TrueForAll(known => known.DistanceTo(corner.Point) > merge))
                _corners.Add(corner.Point);
        for (var ring = 0; ring < rings.Count; ring++)
        for (var i = 0; i < rings[ring].Count; i++)
            Add(ring, i, rings[ring].At(i));
    }

    /// <summary>The sides of all rings in order.</summary>
    internal IReadOnlyList<TouchedSide> Sides => _sides;

    private void Add(int ring, int index, Segment side)
    {
        var (start, end) = (CornerAt(side.Start), CornerAt(side.End));
        var walked = 0.0;
        foreach (var touch in TouchesOf(side).OrderBy(side.LengthAt))
        {
            var length = side.LengthAt(touch);
            _sides.Add(new(ring, index, new(start, touch, BulgeOf(side, walked, length))));
            (start, walked) = (touch, length);
        }
        _sides.Add(new(ring, index, new(start, end, BulgeOf(side, walked, side.Length))));
    }

    private Point CornerAt(Point point) =>
        _corners.Find(corner => corner.DistanceTo(point) <= _merge);

    private IEnumerable<Point> TouchesOf(Segment side) =>
        _corners.Where(corner =>
            side.DistanceTo(corner) <= _merge
            && corner.DistanceTo(side.Start) > _merge
            && corner.DistanceTo(side.End) > _merge
        );

    /// <summary>The bulge of a part of a side, which has its share of the sweep.</summary>
    private static double BulgeOf(Segment side, double from, double to) =>
        Math.Tan((to - from) / side.Length * Math.Atan(side.Bulge));
}
