namespace PatternGen.Geometry;

/// <summary>How a run passes through one of its points: the ways back and ahead.</summary>
internal readonly struct Passage
{
    /// <summary>
    /// Sine of the angle under which two straight ways set off alike. Larger values take lines that cross for one;
    /// smaller ones trust directions that rounding has turned.
    /// </summary>
    private const double SameWay = 1e-7;

    private readonly Way _back;
    private readonly Way _ahead;
    private readonly double _merge;

    private Passage(Way back, Way ahead, double merge)
    {
        _back = back;
        _ahead = ahead;
        _merge = merge;
    }

    /// <summary>The passage at a distance along a run; none at the ends of an open one.</summary>
    internal static Passage? Through(SegmentRun run, double length, double merge)
    {
        var total = run.Length;
        if (!run.IsClosed && (length <= merge || length >= total - merge))
            return null;
        var before = Beside(run, length - merge);
        var after = Beside(run, length + merge);
        // Between two corners both sides lie on one segment; at a corner the ways are those of the segments' ends.
        return new(
            new(-before.Segment.TangentAt(before.Near), -before.Segment.Curvature),
            new(after.Segment.TangentAt(after.Near), after.Segment.Curvature),
            merge
        );

        (Segment Segment, double Near) Beside(SegmentRun run, double beside)
        {
            var (index, within) = run.Seek(beside);
            return (run.At(index), within + (length - beside));
        }
    }

    /// <summary>Whether the other passage comes from one side and goes to the other.</summary>
    internal bool IsCrossedBy(Passage other) => SideOf(other._back) * SideOf(other._ahead) < 0;

    /// <summary>1 to the left of this passage, -1 to the right, 0 along it.</summary>
    private int SideOf(Way way)
    {
        if (IsAlike(_ahead, way))
            return Math.Sign(way.Bend - _ahead.Bend);
        if (IsAlike(_back, way))
            return Math.Sign(_back.Bend - way.Bend);
        return _ahead.TurnTo(way) < _ahead.TurnTo(_back) ? 1 : -1;
    }

    /// <summary>
    /// Whether the curvatures must tell the ways apart. Curves that touch stay within the merge distance for
    /// sqrt(merge / curvature) to either side, and have turned by sqrt(merge × curvature) there.
    /// </summary>
    private bool IsAlike(Way way, Way other)
    {
        var turned = 4 * Math.Sqrt(_merge * (Math.Abs(way.Bend) + Math.Abs(other.Bend)));
        return way.Direction.Dot(other.Direction) > 0
            && Math.Abs(way.Direction.Cross(other.Direction)) <= Math.Max(SameWay, turned);
    }

    /// <summary>A direction of length 1 in which a curve sets off, and its curvature that way.</summary>
    private readonly record struct Way(Vector Direction, double Bend)
    {
        /// <summary>Counter-clockwise angle in radians, from 0 to a whole turn.</summary>
        internal double TurnTo(Way other)
        {
            var turn = Math.Atan2(Direction.Cross(other.Direction), Direction.Dot(other.Direction));
            return turn < 0 ? turn + Math.Tau : turn;
        }
    }
}
