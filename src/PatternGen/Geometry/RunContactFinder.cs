namespace PatternGen.Geometry;

/// <summary>Finds where two runs meet, or one run meets itself.</summary>
internal sealed class RunContactFinder
{
    private readonly SegmentRun _first;
    private readonly SegmentRun _second;
    private readonly Segment[] _firstSegments;
    private readonly Segment[] _secondSegments;
    private readonly Tolerance _tolerance;
    private readonly List<RunContact> _found = [];

    internal RunContactFinder(SegmentRun first, SegmentRun second, Tolerance tolerance)
    {
        _first = first;
        _second = second;
        _firstSegments = first.ToSegments();
        _secondSegments = ReferenceEquals(first, second) ? _firstSegments : second.ToSegments();
        _tolerance = tolerance;
    }

    internal IReadOnlyList<RunContact> Between()
    {
        var grid = ExtentsGrid.Of(_secondSegments, _tolerance);
        for (var i = 0; i < _firstSegments.Length; i++)
        {
            var index = i;
            grid.Visit(_firstSegments[i].Extents, other => Add(index, other));
        }
        return Distinct();
    }

    internal IReadOnlyList<RunContact> Within()
    {
        ExtentsGrid.Of(_firstSegments, _tolerance).VisitPairs(Add);
        return Distinct();
    }

    private void Add(int first, int second)
    {
        var segment = _firstSegments[first];
        var other = _secondSegments[second];
        var meeting = segment.Intersect(other, _tolerance);
        for (var i = 0; i < meeting.PointCount; i++)
            AddPoint(first, second, meeting.PointAt(i));
        for (var i = 0; i < meeting.StretchCount; i++)
            AddStretch(first, second, meeting.StretchAt(i));
    }

    private void AddPoint(int first, int second, Point point) =>
        Add(ContactKind.Touching, first, second, point, null);

    private void AddStretch(int first, int second, Segment stretch) =>
        Add(ContactKind.Overlapping, first, second, stretch.Start, stretch);

    private void Add(ContactKind kind, int first, int second, Point point, Segment? stretch)
    {
        var onFirst = Place(_first, first, _firstSegments[first], point);
        var onSecond = Place(_second, second, _secondSegments[second], point);
        if (ReferenceEquals(_first, _second))
        {
            if (onFirst.Length > onSecond.Length)
                (onFirst, onSecond) = (onSecond, onFirst);
            // A place always meets itself: neighbours have a corner in common.
            if (stretch is null && IsOnePlace(onFirst.Length, onSecond.Length))
                return;
        }
        _found.Add(new(kind, point, onFirst, onSecond, stretch));
    }

    private bool IsOnePlace(double onFirst, double onSecond)
    {
        var apart = onSecond - onFirst;
        if (_first.IsClosed)
            apart = Math.Min(apart, _first.Length - apart);
        return apart <= 2 * _tolerance.Merge;
    }

    /// <summary>Distance along the run; the end of a closed run is its start.</summary>
    private RunPlace Place(SegmentRun run, int index, Segment segment, Point point)
    {
        var length = run.StartOf(index) + segment.LengthAt(point);
        var isStart = run.IsClosed && run.Length - length <= _tolerance.Merge;
        return new(isStart ? 0 : length, index);
    }

    /// <summary>In order, each place once, with points classified.</summary>
    private List<RunContact> Distinct()
    {
        var stretches = _found.FindAll(contact => contact.Stretch is not null);
        _found.Sort((a, b) => a.LengthOnFirst.CompareTo(b.LengthOnFirst));
        var distinct = new List<RunContact>();
        foreach (var contact in _found)
        {
            if (contact.Stretch is not null)
                distinct.Add(contact);
            else if (!IsKnown(contact, distinct) && !IsEndOfStretch(contact, stretches))
                distinct.Add(Classified(contact));
        }
        return distinct;
    }

    private bool IsKnown(RunContact contact, List<RunContact> distinct)
    {
        var near = 2 * _tolerance.Merge;
        for (var i = distinct.Count - 1; i >= 0; i--)
        {
            if (contact.LengthOnFirst - distinct[i].LengthOnFirst > near)
                return false;
            if (
                distinct[i].Stretch is null
                && Math.Abs(contact.LengthOnSecond - distinct[i].LengthOnSecond) <= near
            )
                return true;
        }
        return false;
    }

    private bool IsEndOfStretch(RunContact contact, List<RunContact> stretches) =>
        stretches.Exists(shared =>
            shared.Stretch is { } stretch
            && (
                _tolerance.Same(stretch.Start, contact.Point)
                || _tolerance.Same(stretch.End, contact.Point)
            )
        );

    private RunContact Classified(RunContact contact)
    {
        var first = Passage.Through(_first, contact.LengthOnFirst, _tolerance.Merge);
        var second = Passage.Through(_second, contact.LengthOnSecond, _tolerance.Merge);
        var isCrossing = first is { } a && second is { } b && a.IsCrossedBy(b);
        return isCrossing ? contact with { Kind = ContactKind.Crossing } : contact;
    }
}
