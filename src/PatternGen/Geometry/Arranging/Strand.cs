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

    /// <summary>A line or an arc of at most a half circle.</summary>
    internal Strand(Segment segment)
    {
        Segment = segment;
        (Start, End) = (segment.Start, segment.End);
        _frame = new(segment);
    }

    /// <summary>An arc of more than a half circle, from start to end counter-clockwise.</summary>
    internal Strand(Circle circle, Point start, Point end)
    {
        IsRound = true;
        Circle = circle;
        (Start, End) = (start, end);
        // Keys start in the middle of what is missing, so that a start which is merged a little back stays the least.
        var (from, to) = (Diamond.Of(start - circle.Centre), Diamond.Of(end - circle.Centre));
        _from = to + Diamond.Turned(from - to) / 2;
        if (_from >= Diamond.Turn)
            _from -= Diamond.Turn;
    }

    /// <summary>A whole circle.</summary>
    internal Strand(Circle circle)
    {
        IsRound = true;
        IsWhole = true;
        Circle = circle;
    }

    /// <summary>The curves, by their place in the drawing, that run along it, in ascending order.</summary>
    internal int[] Sources { get; init; } = [];

    /// <summary>Whether it is kept as a circle: whole, or an arc of more than half of it.</summary>
    internal bool IsRound { get; }

    /// <summary>Whether it is a whole circle, without ends.</summary>
    internal bool IsWhole { get; }

    /// <summary>The curve of a strand that is not round.</summary>
    internal Segment Segment { get; }

    /// <summary>The circle of a round strand.</summary>
    internal Circle Circle { get; }

    internal Point Start { get; }

    internal Point End { get; }

    internal Extents Extents => IsRound ? Circle.Extents : Segment.Extents;

    /// <summary>Grows along the strand: round a circle it takes four sides of a square.</summary>
    internal double KeyOf(Point point) =>
        IsRound ? Diamond.Turned(Diamond.Of(point - Circle.Centre) - _from) : _frame.Foot(point);

    /// <summary>Whether a point of a round strand's circle lies on the strand: always, unless it is an arc.</summary>
    internal bool Reaches(Point point) =>
        IsWhole || (KeyOf(point) is var key && key >= KeyOf(Start) && key <= KeyOf(End));

    internal double DistanceTo(Point point)
    {
        if (!IsRound)
            return Segment.DistanceTo(point);
        var toCircle = Math.Abs(Circle.Centre.DistanceTo(point) - Circle.Radius);
        return Reaches(point) ? toCircle : Math.Min(Start.DistanceTo(point), End.DistanceTo(point));
    }

    /// <summary>The point of the strand half-way between two of its points that are near each other.</summary>
    internal Point HalfWay(Point one, Point other)
    {
        if (!IsRound)
            return _frame.At((Inside(one) + Inside(other)) / 2);
        var towards = (one - Circle.Centre) + (other - Circle.Centre);
        // Opposite points have no nearer way; either will do.
        if (towards == Vector.Zero)
            towards = (one - Circle.Centre).Left;
        return Circle.Centre + towards.Unit() * Circle.Radius;
    }

    /// <summary>The direction of the strand, of length 1, at one of its points.</summary>
    internal Vector TangentAt(Point point) =>
        IsRound ? (point - Circle.Centre).Left / Circle.Radius : _frame.TangentAt(Inside(point));

    /// <summary>The part between two keys of a strand that is a segment, from node to node.</summary>
    internal Segment Part(double fromKey, double toKey, Point from, Point to)
    {
        if (from == Start && to == End)
            return Segment;
        if (Segment.IsLine)
            return new(from, to);
        var share = (_frame.Walked(toKey) - _frame.Walked(fromKey)) / Segment.Length;
        // Rounding, or an end merged a little beyond, must not make more than a half circle of one.
        return new(from, to, Segment.PartBulge(Math.Min(1, share)));
    }

    private double Inside(Point point) => Math.Clamp(_frame.Foot(point), -_frame.Half, _frame.Half);
}
