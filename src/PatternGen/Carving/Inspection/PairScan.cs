using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Looks at two chips side by side: which parts of their outlines come near each other, meet or cross.</summary>
internal readonly struct PairScan
{
    /// <summary>Share by which going along a side may seem to narrow a neck that has the same width all along.</summary>
    private const double Level = 1e-9;

    /// <summary>Two sides that part by less than this share of the way along them run at one distance.</summary>
    private const double EvenShare = 1e-3;

    private readonly ShapeSides _one;
    private readonly ShapeSides _other;
    private readonly double _reach;
    private readonly double _merge;

    private PairScan(ShapeSides one, ShapeSides other, double reach, double merge)
    {
        _one = one;
        _other = other;
        _reach = reach;
        _merge = merge;
    }

    /// <summary>Returns how two chips lie to each other.</summary>
    /// <param name="one">The first chip.</param>
    /// <param name="other">The second, in the first one's frame.</param>
    /// <param name="reach">Necks narrower than this count.</param>
    /// <param name="merge">Places nearer than this are one.</param>
    internal static PairFacts Between(
        ShapeSides one,
        ShapeSides other,
        double reach,
        double merge
    ) => new PairScan(one, other, reach, merge).Between();

    /// <summary>Returns the narrow necks of ground that one chip goes round.</summary>
    internal static Neck[] Within(ShapeSides one, double reach, double merge) =>
        new PairScan(one, one, reach, merge).Within();

    private PairFacts Between()
    {
        List<Neck>? necks = null;
        var touches = false;
        for (var i = 0; i < _one.Count; i++)
        {
            var near = _one.ExtentsOf(i).Grown(_reach);
            if (!near.Touches(_other.Extents))
                continue;
            for (var j = 0; j < _other.Count; j++)
                if (near.Touches(_other.ExtentsOf(j)))
                    touches |= Compare(i, j, ref necks);
        }
        if (OverlapScan.Parting(_one, _other, _merge, touches) is { } parting)
            return new([], [], parting);
        if (necks is null && !touches)
            return PairFacts.Apart;
        // Of equals the one between sides comes first, whose place shows more than that of two corners.
        var ordered = (necks ?? []).OrderBy(neck => neck.Corner >= 0 && neck.OtherCorner >= 0);
        return new([.. ordered], touches ? Touches() : [], null);
    }

    private Neck[] Within()
    {
        List<Neck>? necks = null;
        for (var i = 0; i < _one.Count; i++)
        {
            var near = _one.ExtentsOf(i).Grown(_reach);
            for (var j = i + 1; j < _one.Count; j++)
                if (near.Touches(_one.ExtentsOf(j)) && _one.After(i) != j && _one.After(j) != i)
                    Compare(i, j, ref necks);
        }
        return [.. necks ?? []];
    }

    /// <summary>Takes the neck between two sides, if it is one; true if they touch.</summary>
    private bool Compare(int i, int j, ref List<Neck>? necks)
    {
        var places = NearestFinder.Between(in _one.Side(i), in _other.Side(j));
        if (places.Distance > _reach)
            return false;
        var touches = places.Distance <= _merge;
        if (touches && !IsTangency(i, j, places))
            return true;
        var corner = CornerAt(_one, i, places.Here);
        var otherCorner = CornerAt(_other, j, places.There);
        if (
            !touches
            && (corner >= 0 || otherCorner >= 0)
            && EvenRun(i, j, places.Distance) is { } even
        )
            (places, corner, otherCorner) = (even, -1, -1);
        if (
            !touches
            && !(
                IsNarrowest(_one, i, corner, places.Here, places.There)
                && IsNarrowest(_other, j, otherCorner, places.There, places.Here)
            )
        )
            return false;
        Add(places, corner, otherCorner, necks ??= []);
        return touches;
    }

    /// <summary>
    /// Where two sides run along each other at one distance, the middle of that run: there no corner stands for what is
    /// as narrow all along.
    /// </summary>
    private NearestPlaces? EvenRun(int i, int j, double distance)
    {
        ref readonly var one = ref _one.Side(i);
        ref readonly var other = ref _other.Side(j);
        var from = one.Segment.LengthAt(one.Nearest(other.Start));
        var to = one.Segment.LengthAt(one.Nearest(other.End));
        var run = Math.Abs(to - from);
        var here = one.Segment.PointAt((from + to) / 2);
        var there = other.Nearest(here);
        var width = here.DistanceTo(there);
        return run > _merge && width - distance <= EvenShare * run ? new(here, there, width) : null;
    }

    private void Add(NearestPlaces places, int corner, int otherCorner, List<Neck> necks)
    {
        foreach (var known in necks)
            if (
                known.Here.DistanceTo(places.Here) <= _merge
                && known.There.DistanceTo(places.There) <= _merge
            )
                return;
        var tips =
            corner >= 0
            && otherCorner >= 0
            && _one.Corner(corner).IsTip
            && _other.Corner(otherCorner).IsTip;
        necks.Add(new(places.Here, places.There, corner, otherCorner, tips));
    }

    /// <summary>The corner that a place of a side is, or -1.</summary>
    private int CornerAt(ShapeSides sides, int side, Point place)
    {
        if (place.DistanceTo(sides.Side(side).Start) <= _merge)
            return side;
        return place.DistanceTo(sides.Side(side).End) <= _merge ? sides.After(side) : -1;
    }

    /// <summary>
    /// Whether the ground widens when one goes either way along the chip: the way across is square to the side, or a
    /// corner that points at it ends both; and it leaves the chip.
    /// </summary>
    private bool IsNarrowest(ShapeSides sides, int side, int corner, Point place, Point opposite)
    {
        var across = opposite - place;
        if (corner < 0)
        {
            ref readonly var frame = ref sides.Side(side).Frame;
            return frame.TangentAt(frame.Foot(place)).Cross(across) < 0;
        }
        var joint = sides.Corner(corner);
        // A place this near to a corner is the corner, and the way across it turns by as much.
        var slack = Math.Max(_merge, Level * across.Length);
        return !joint.PointsIn
            && joint.Out.Dot(across) <= slack
            && joint.In.Dot(across) >= -slack
            && (joint.Out.Cross(across) < 0 || joint.In.Cross(across) < 0);
    }

    /// <summary>Whether two sides touch in a point that is no corner, so that the ridge thins out to nothing there.</summary>
    private bool IsTangency(int i, int j, NearestPlaces places) =>
        CornerAt(_one, i, places.Here) < 0
        && CornerAt(_other, j, places.There) < 0
        && _one.Side(i).Segment.Intersect(_other.Side(j).Segment, Tolerance.OfMerge(_merge)).Kind
            == IntersectionKind.Tangent;

    private SideTouch[] Touches()
    {
        var touches = new List<SideTouch>();
        AddTouches(_one, _other, true, touches);
        AddTouches(_other, _one, false, touches);
        return [.. touches];
    }

    private void AddTouches(
        ShapeSides corners,
        ShapeSides sides,
        bool isOfSecond,
        List<SideTouch> touches
    )
    {
        for (var i = 0; i < corners.Count; i++)
        {
            var corner = corners.Side(i).Start;
            for (var j = 0; j < sides.Count; j++)
            {
                ref readonly var side = ref sides.Side(j);
                if (
                    !sides.ExtentsOf(j).Grown(_merge).Contains(corner)
                    || CornerAt(sides, j, corner) >= 0
                    || side.Nearest(corner).DistanceTo(corner) > _merge
                )
                    continue;
                var along = side.Frame.TangentAt(side.Frame.Foot(corner));
                touches.Add(new(corner, along, side.Frame.Curvature, isOfSecond));
            }
        }
    }
}
