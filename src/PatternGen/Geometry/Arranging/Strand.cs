namespace PatternGen.Geometry;

/// <summary>A curve as the arrangement cuts it up: each of its points has a key that grows along it.</summary>
/// <remarks>
/// Lines and arcs of up to a half circle are kept as segments, since these keep their digits however flat they are. Whole
/// circles and longer arcs are kept as circles, counter-clockwise: as halves they would get a node where nothing meets.
/// </remarks>
internal readonly struct Strand
{
    private readonly ArcFrame _frame;
    private readonly double _from;
    private readonly double _span;

    internal Strand(Segment segment)
    {
        Segment = segment;
        IsRound = Math.Abs(segment.Bulge) > 1;
        (Start, End) =
            IsRound && segment.Bulge < 0
                ? (segment.End, segment.Start)
                : (segment.Start, segment.End);
        if (!IsRound)
        {
            _frame = new(segment);
            return;
        }
        Circle = new(segment.Centre, segment.Radius);
        _from = Diamond.Of(Start - Circle.Centre);
        _span = Diamond.Turned(Diamond.Of(End - Circle.Centre) - _from);
    }

    internal Strand(Circle circle)
    {
        IsRound = true;
        IsWhole = true;
        Circle = circle;
    }

    /// <summary>Whether it is kept as a circle: whole, or an arc of more than half of it.</summary>
    internal bool IsRound { get; }

    /// <summary>Whether it is a whole circle, without ends.</summary>
    internal bool IsWhole { get; }

    /// <summary>The curve, unless it is a whole circle.</summary>
    internal Segment Segment { get; }

    /// <summary>The circle of a round strand.</summary>
    internal Circle Circle { get; }

    /// <summary>Where a strand that is not whole starts; a long arc starts where it does when walked counter-clockwise.</summary>
    internal Point Start { get; }

    internal Point End { get; }

    internal Extents Extents => IsRound ? Circle.Extents : Segment.Extents;

    /// <summary>Grows along the strand: from 0 to 4 round a whole circle.</summary>
    internal double KeyOf(Point point) =>
        IsRound ? Diamond.Turned(Diamond.Of(point - Circle.Centre) - _from) : _frame.Foot(point);

    /// <summary>Whether a point of a round strand's circle lies on the strand: always, unless it is an arc.</summary>
    internal bool Reaches(Point point, Tolerance tolerance) =>
        IsWhole
        || KeyOf(point) <= _span
        || tolerance.Same(point, Start)
        || tolerance.Same(point, End);

    /// <summary>The part between two keys of a strand that is a segment, from node to node.</summary>
    internal Segment Part(double fromKey, double toKey, Point from, Point to)
    {
        if (Segment.IsLine)
            return new(from, to);
        var share = (_frame.Walked(toKey) - _frame.Walked(fromKey)) / Segment.Length;
        return new(from, to, Segment.PartBulge(share));
    }
}
