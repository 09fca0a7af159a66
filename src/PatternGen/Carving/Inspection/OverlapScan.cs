using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds out whether two chips overlap, and how to part them.</summary>
/// <remarks>
/// Their outlines are cut where they meet. The chips overlap if the middle of a piece of one outline lies in the other
/// chip; or, where each piece lies on the other outline, if a place well inside one lies in the other.
/// </remarks>
internal readonly struct OverlapScan
{
    /// <summary>At most so many places are told apart on one side; no chip has neighbours enough to need them.</summary>
    private const int MostCuts = 256;

    /// <summary>Two places of a side, as shares of it, at which nobody sets a corner of another chip: corners touch at its middle or its ends.</summary>
    private const double OneShare = 0.41;

    private const double OtherShare = 0.77;

    private readonly ShapeSides _one;
    private readonly ShapeSides _other;
    private readonly double _merge;

    private OverlapScan(ShapeSides one, ShapeSides other, double merge)
    {
        _one = one;
        _other = other;
        _merge = merge;
    }

    /// <summary>Returns the shortest move of the second chip that parts them, or null if they do not overlap.</summary>
    /// <param name="one">The first chip.</param>
    /// <param name="other">The second.</param>
    /// <param name="merge">Chips that overlap by less than this only touch.</param>
    /// <param name="touches">Whether their outlines meet.</param>
    internal static Vector? Parting(ShapeSides one, ShapeSides other, double merge, bool touches)
    {
        if (!one.Extents.Touches(other.Extents))
            return null;
        var scan = new OverlapScan(one, other, merge);
        return (touches ? scan.IsCut() : scan.IsWithin()) ? scan.Shortest() : null;
    }

    /// <summary>Returns a place of a chip that lies off the wood, the farthest of those that were tried; null if all of it lies on the wood.</summary>
    /// <param name="chip">The chip.</param>
    /// <param name="wood">The edges of the wood.</param>
    /// <param name="merge">What lies off by less than this lies on the edge.</param>
    internal static Point? PlaceOutside(ShapeSides chip, ShapeSides wood, double merge)
    {
        var scan = new OverlapScan(chip, wood, merge);
        Point? farthest = null;
        var most = merge;
        Span<double> cuts = stackalloc double[MostCuts];
        for (var i = 0; i < chip.Count; i++)
        {
            var side = chip.Side(i).Segment;
            var count = scan.Cut(side, side.Length, wood, cuts);
            cuts[..count].Sort();
            for (var k = 0; k < count; k++)
            {
                Try(side.PointAt(cuts[k]), ref farthest);
                if (k > 0)
                    Try(side.PointAt((cuts[k - 1] + cuts[k]) / 2), ref farthest);
            }
        }
        // A hole in the wood may lie wholly within the chip.
        for (var i = 0; farthest is null && i < wood.Count; i++)
            if (chip.Holds(wood.Side(i).Start, merge))
                farthest = wood.Side(i).Start;
        return farthest;

        void Try(Point place, ref Point? found)
        {
            if (!wood.Surrounds(place) && wood.DistanceTo(place) is var off && off > most)
                (found, most) = (place, off);
        }
    }

    /// <summary>Without a place in common, one lies wholly in the other or outside it.</summary>
    private bool IsWithin() =>
        _other.Holds(_one.Side(0).Start, _merge) || _one.Holds(_other.Side(0).Start, _merge);

    private bool IsCut() => Enters(_one, _other) || Enters(_other, _one) || Coincide();

    private bool Enters(ShapeSides chip, ShapeSides into)
    {
        Span<double> cuts = stackalloc double[MostCuts];
        for (var i = 0; i < chip.Count; i++)
        {
            if (!chip.ExtentsOf(i).Touches(into.Extents))
                continue;
            var side = chip.Side(i).Segment;
            var length = side.Length;
            var count = Cut(side, length, into, cuts);
            cuts[..count].Sort();
            for (var k = 1; k < count; k++)
                if (
                    cuts[k] - cuts[k - 1] > 4 * _merge
                    && into.Holds(side.PointAt((cuts[k - 1] + cuts[k]) / 2), _merge)
                )
                    return true;
        }
        return false;
    }

    private int Cut(Segment side, double length, ShapeSides by, Span<double> cuts)
    {
        (cuts[0], cuts[1]) = (0, length);
        var count = 2;
        var near = ShapeSides.BoxOf(side).Grown(_merge);
        for (var j = 0; j < by.Count && count + 4 <= cuts.Length; j++)
        {
            if (!near.Touches(by.ExtentsOf(j)))
                continue;
            var meeting = side.Intersect(by.Side(j).Segment, Tolerance.OfMerge(_merge));
            for (var k = 0; k < meeting.PointCount; k++)
                cuts[count++] = side.LengthAt(meeting.PointAt(k));
            if (meeting.StretchCount > 0)
            {
                cuts[count++] = side.LengthAt(meeting.FirstStretch.Start);
                cuts[count++] = side.LengthAt(meeting.FirstStretch.End);
            }
        }
        return count;
    }

    /// <summary>Whether the outlines are the same, and not two that fill each other's holes: the chips then lie on one side of them.</summary>
    private bool Coincide() => GoesAlong(OneShare) && GoesAlong(OtherShare);

    /// <summary>Whether the other outline goes the same way at a place of the first side.</summary>
    private bool GoesAlong(double share)
    {
        ref readonly var side = ref _one.Side(0);
        var place = side.Segment.PointAt(side.Segment.Length * share);
        for (var j = 0; j < _other.Count; j++)
        {
            ref readonly var candidate = ref _other.Side(j);
            if (candidate.Nearest(place).DistanceTo(place) > _merge)
                continue;
            var along = candidate.Frame.TangentAt(candidate.Frame.Foot(place));
            return along.Dot(side.Frame.TangentAt(side.Frame.Foot(place))) > 0;
        }
        return false;
    }

    /// <summary>Of the ways square to a side, and the way from middle to middle, the shortest that parts the chips as a whole.</summary>
    private Vector Shortest()
    {
        var between = _other.Extents.Centre - _one.Extents.Centre;
        var shortest = Along(between.Length > _merge ? between.Unit() : new(1, 0));
        for (var i = 0; i < _one.Count; i++)
            Try(-_one.Side(i).Frame.Normal, ref shortest);
        for (var j = 0; j < _other.Count; j++)
            Try(_other.Side(j).Frame.Normal, ref shortest);
        return shortest;
    }

    private void Try(Vector direction, ref Vector shortest)
    {
        var move = Along(direction);
        if (move.LengthSquared < shortest.LengthSquared * (1 - 1e-9))
            shortest = move;
    }

    private Vector Along(Vector direction) =>
        direction * (_one.ReachTowards(direction) + _other.ReachTowards(-direction));
}
