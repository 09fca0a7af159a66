using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The sides of a chip, of its outline and its holes, all walked with the chip on the left.</summary>
internal sealed class ShapeSides
{
    private readonly SegmentFrame[] _sides;
    private readonly Extents[] _extents;

    /// <summary>For each side the one that follows it in its ring.</summary>
    private readonly int[] _next;
    private readonly int[] _previous;

    private ShapeSides(SegmentFrame[] sides, int[] next)
    {
        _sides = sides;
        _next = next;
        _previous = new int[next.Length];
        for (var i = 0; i < next.Length; i++)
            _previous[next[i]] = i;
        _extents = Array.ConvertAll(sides, side => BoxOf(side.Segment));
        Extents = _extents[0];
        for (var i = 1; i < _extents.Length; i++)
            Extents = Extents.Including(_extents[i]);
    }

    /// <summary>Number of sides, and of corners.</summary>
    internal int Count => _sides.Length;

    /// <summary>A rectangle that holds the chip; round arcs it may be a little large.</summary>
    internal Extents Extents { get; }

    internal static ShapeSides Of(ChipShape shape) => Of(shape.Holes.Prepend(shape.Outline));

    /// <summary>The sides of rings that all have their inside on the left.</summary>
    internal static ShapeSides Of(IEnumerable<Contour> rings)
    {
        var sides = new List<SegmentFrame>();
        var next = new List<int>();
        foreach (var ring in rings)
        {
            var first = sides.Count;
            foreach (var side in ring.Segments)
            {
                sides.Add(new(side));
                next.Add(sides.Count);
            }
            next[^1] = first;
        }
        return new([.. sides], [.. next]);
    }

    internal ref readonly SegmentFrame Side(int side) => ref _sides[side];

    internal Extents ExtentsOf(int side) => _extents[side];

    internal int After(int side) => _next[side];

    internal int Before(int side) => _previous[side];

    /// <summary>The corner at which a side starts.</summary>
    internal ShapeCorner Corner(int side) => new(in _sides[_previous[side]], in _sides[side]);

    /// <summary>Returns the sides as a transform places them; mirrored ones are walked the other way round.</summary>
    internal ShapeSides Placed(Transform transform)
    {
        var mirrored = transform.IsMirrored;
        var placed = new SegmentFrame[_sides.Length];
        for (var i = 0; i < placed.Length; i++)
        {
            var side = _sides[i].Segment;
            var moved = new Segment(
                transform.Apply(side.Start),
                transform.Apply(side.End),
                transform.ApplyBulge(side.Bulge)
            );
            placed[i] = new(mirrored ? moved.Reversed() : moved);
        }
        return new(placed, mirrored ? _previous : _next);
    }

    /// <summary>Whether a point lies in the chip, more than a distance from its outline.</summary>
    internal bool Holds(Point point, double deeperThan) =>
        Surrounds(point) && DistanceTo(point) > deeperThan;

    /// <summary>Whether the sides run round a point.</summary>
    internal bool Surrounds(Point point)
    {
        if (!Extents.Contains(point))
            return false;
        var turns = 0;
        foreach (ref readonly var side in _sides.AsSpan())
            turns += Winding.Share(side.Segment, point);
        return turns > 0;
    }

    /// <summary>Distance of a point from the nearest side.</summary>
    internal double DistanceTo(Point point) => Nearest(point).Place.DistanceTo(point);

    /// <summary>The place on the sides that is nearest to a point, and how its side runs there.</summary>
    internal (Point Place, Vector Along) Nearest(Point point)
    {
        var (nearest, place, square) = (0, point, double.PositiveInfinity);
        for (var i = 0; i < _sides.Length; i++)
        {
            var candidate = _sides[i].Nearest(point);
            if ((candidate - point).LengthSquared is var away && away < square)
                (nearest, place, square) = (i, candidate, away);
        }
        ref readonly var frame = ref _sides[nearest].Frame;
        return (place, frame.TangentAt(frame.Foot(place)));
    }

    /// <summary>How far the chip reaches from the origin in a direction of length 1.</summary>
    internal double ReachTowards(Vector direction)
    {
        var reach = double.NegativeInfinity;
        foreach (ref readonly var side in _sides.AsSpan())
            reach = Math.Max(reach, ReachOf(in side, direction));
        return reach;
    }

    private static double ReachOf(in SegmentFrame side, Vector direction)
    {
        var reach = Math.Max(Along(side.Start), Along(side.End));
        ref readonly var frame = ref side.Frame;
        if (frame.Curvature == 0)
            return reach;
        // Where the tangent is square to the direction: after turning by such an angle from the middle, or half a turn more.
        var turn = Math.Atan2(-direction.Dot(frame.Tangent), direction.Dot(frame.Normal));
        Try(Math.Tan(turn / 2), in frame);
        Try(-1 / Math.Tan(turn / 2), in frame);
        return reach;

        void Try(double tangent, in ArcFrame arc)
        {
            var s = 2 / arc.Curvature * tangent;
            if (Math.Abs(s) < arc.Half)
                reach = Math.Max(reach, Along(arc.At(s)));
        }

        double Along(Point point) => direction.Dot(point - Point.Origin);
    }

    /// <summary>A rectangle that holds a side, without the trigonometry of the exact extents: an arc of at most a half circle lies between its chord and its height.</summary>
    internal static Extents BoxOf(Segment side)
    {
        var box = Extents.Of(side.Start).Including(side.End);
        if (side.IsLine)
            return box;
        var rise = side.Chord.Left * (-side.Bulge / 2);
        return box.Including(side.Start + rise).Including(side.End + rise);
    }
}
