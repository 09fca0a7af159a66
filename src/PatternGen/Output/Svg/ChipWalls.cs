using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The walls of a chip of any outline, from its sides down to the valley: each point of a side belongs with the middle of
/// the largest circle in the chip that touches the side there. The valley is sampled, for a picture.
/// </summary>
internal sealed class ChipWalls
{
    /// <summary>Places on a side that are looked at, at most; with fewer, valleys look jagged.</summary>
    private const int MostPlaces = 20;

    /// <summary>Places on all sides together: of many, each is so short that few places on it will do.</summary>
    private const int PlacesInAll = 500;

    /// <summary>Sides of a chip whose walls are drawn, at most: each is measured against all others. No knife goes round more.</summary>
    private const int MostSides = 200;

    /// <summary>Halvings of the search for the largest circle: to a thousandth of the chip's size.</summary>
    private const int Halvings = 12;

    /// <summary>Share of its radius by which a circle may reach over another side, or rounding would refuse all.</summary>
    private const double Over = 1e-3;

    /// <summary>Turn from one facet to the next round a corner that points inward.</summary>
    private const double CornerStep = Math.PI / 12;

    private readonly Contour[] _rings;
    private readonly double _reach;
    private readonly int _places;
    private readonly List<Wall> _walls = [];

    private ChipWalls(ChipShape shape)
    {
        _rings = [shape.Outline, .. shape.Holes];
        _places = Math.Clamp(PlacesInAll / _rings.Sum(ring => ring.Count), 2, MostPlaces);
        _reach = Math.Max(shape.Outline.Extents.Width, shape.Outline.Extents.Height) / 2;
    }

    internal static IReadOnlyList<Wall> Of(ChipShape shape)
    {
        var walls = new ChipWalls(shape);
        if (walls._rings.Sum(ring => ring.Count) > MostSides)
            return [];
        foreach (var ring in walls._rings)
            for (var i = 0; i < ring.Count; i++)
                walls.AddSide(
                    ring.At((i + ring.Count - 1) % ring.Count),
                    ring.At(i),
                    ring.At((i + 1) % ring.Count)
                );
        return walls._walls;
    }

    private void AddSide(Segment before, Segment side, Segment after)
    {
        var start = SmoothJoint.AngleOnLeft(before, side);
        var endsInTip = SmoothJoint.IsTip(SmoothJoint.AngleOnLeft(side, after));
        if (SmoothJoint.IsInward(start))
            AddCone(before, side, start - Math.PI);
        var last = Foot(side.Start, side.NormalAt(0), SmoothJoint.IsTip(start));
        double done = 0;
        for (var i = 1; i <= _places; i++)
        {
            // Closer together near the corners, where the valley turns.
            var share = (1 - Math.Cos(Math.PI * i / _places)) / 2;
            var along = side.Length * share;
            var isTip = endsInTip && i == _places;
            var next = Foot(side.PointAt(along), side.NormalAt(along), isTip);
            Add(last, next, side.PartBulge(share - done));
            (last, done) = (next, share);
        }
    }

    /// <summary>Where the outline turns inward, the wall goes round the corner as a cone.</summary>
    /// <param name="before">The side before the corner.</param>
    /// <param name="side">The side after it.</param>
    /// <param name="turn">By how much the outline turns to the right there, in radians.</param>
    private void AddCone(Segment before, Segment side, double turn)
    {
        var normal = before.NormalAt(before.Length);
        var last = Foot(side.Start, normal, isTip: false);
        var steps = (int)Math.Ceiling(turn / CornerStep);
        for (var i = 1; i <= steps; i++)
        {
            var turned = Transform.Rotate(Angle.FromRadians(-turn * i / steps)).Apply(normal);
            var next = Foot(side.Start, turned, isTip: false);
            Add(last, next, 0);
            last = next;
        }
    }

    private void Add(WallFoot start, WallFoot end, double bulge)
    {
        if (_walls.Count > 0 && _walls[^1].GoesOn(start, end))
            _walls[^1].Extend(end, bulge);
        else
            _walls.Add(new(start, end, bulge));
    }

    /// <summary>Searches the largest circle; in a tip there is none.</summary>
    private WallFoot Foot(Point edge, Vector normal, bool isTip)
    {
        var (inside, outside) = (0.0, isTip ? 0 : _reach);
        for (var i = 0; i < Halvings && outside > 0; i++)
        {
            var radius = (inside + outside) / 2;
            var middle = edge + normal * radius;
            // Where the chip is far narrower than that, such as near the tip between two circles that touch, only the
            // middle being outside tells.
            var isFree =
                _rings.Sum(ring => Winding.Of(ring, middle)) > 0
                && Array.TrueForAll(_rings, ring => ring.DistanceTo(middle) > (1 - Over) * radius);
            (inside, outside) = isFree ? (radius, outside) : (inside, radius);
        }
        return new(edge, edge + normal * inside, inside, normal);
    }
}
