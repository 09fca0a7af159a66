namespace PatternGen.Geometry;

/// <summary>Draws the closed curve beside rings whose winding number tells the offset; see <see cref="RegionOffset"/>.</summary>
/// <param name="toLeft">Distance to the left of the rings in mm, negative to the right.</param>
/// <param name="join">How it goes round corners that open.</param>
/// <param name="tolerance">Corners nearer than its merge distance are one.</param>
internal sealed class OffsetCurve(double toLeft, OffsetJoin join, Tolerance tolerance)
{
    /// <summary>
    /// Sine of the turn under which a corner that turns back counts as a cusp, whose sense of turning only the curvatures
    /// tell. Larger values would ask the curvatures of corners that do turn; smaller ones would trust rounding.
    /// </summary>
    private const double CuspTurn = 1e-9;

    private readonly List<Segment> _path = [];
    private readonly List<Segment> _parallels = [];
    private Point _at;

    /// <summary>All of the closed curves.</summary>
    internal ReadOnlySpan<Segment> Path =>
        System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_path);

    /// <summary>
    /// The parts that can bound the result: parallels and joins. The straight lines through corners and centres lie nearer
    /// than the distance all along, so they never do.
    /// </summary>
    internal Segment[] Parallels => [.. _parallels];

    /// <summary>Adds the curve beside a ring.</summary>
    internal void Add(Contour ring)
    {
        var sides = SidesOf(ring);
        if (sides.Length < 2)
            return;
        _at = sides[0].Entry;
        for (var i = 0; i < sides.Length; i++)
        {
            AddSide(sides[i]);
            AddCorner(sides[i], sides[(i + 1) % sides.Length]);
        }
    }

    private Side[] SidesOf(Contour ring)
    {
        var corners = new List<Vertex>();
        foreach (var vertex in ring.Span)
        {
            // The second of two doubled corners carries the bulge that counts.
            if (corners.Count > 0 && tolerance.Same(corners[^1].Point, vertex.Point))
                corners[^1] = new(corners[^1].Point, vertex.Bulge);
            else
                corners.Add(vertex);
        }
        while (corners.Count > 1 && tolerance.Same(corners[^1].Point, corners[0].Point))
            corners.RemoveAt(corners.Count - 1);
        var sides = new Side[corners.Count];
        for (var i = 0; i < sides.Length && sides.Length > 1; i++)
        {
            var next = corners[(i + 1) % corners.Count].Point;
            sides[i] = new(new(corners[i].Point, next, corners[i].Bulge), toLeft, tolerance);
        }
        return sides;
    }

    /// <summary>The parallel, or, of an arc that has shrunk through its centre, the two radii.</summary>
    private void AddSide(Side side)
    {
        if (side.HasCollapsed)
        {
            LineTo(side.Original.Centre);
            LineTo(side.Original.End);
        }
        else
        {
            AddParallel(new(_at, side.ParallelEnd, side.Original.Bulge));
        }
    }

    private void AddCorner(Side side, Side next)
    {
        var turn = Turn(side, next);
        if (Math.Abs(Math.Sin(turn / 2) * toLeft) * 2 <= tolerance.Merge)
        {
            // Straight on: the two parallels share their end.
            if (side.HasCollapsed || next.HasCollapsed)
                LineTo(next.Entry);
            else
                AlignTo(next);
        }
        else if (turn * toLeft < 0)
        {
            LineTo(side.ParallelEnd);
            AddJoin(side, next, turn);
            LineTo(next.Entry);
        }
        else
        {
            LineTo(side.Original.End);
            LineTo(next.Entry);
        }
    }

    /// <summary>Ends the parallel that was added last exactly where the next one starts.</summary>
    private void AlignTo(Side next)
    {
        var last = _path[^1];
        var aligned = new Segment(last.Start, next.Entry, last.Bulge);
        _path[^1] = aligned;
        _parallels[^1] = aligned;
        _at = next.Entry;
    }

    private void AddJoin(Side side, Side next, double turn)
    {
        var mitre = 1 / Math.Cos(turn / 2);
        if (mitre > 0 && mitre <= join.MitreLimit)
        {
            var sum = side.EndNormal + next.StartNormal;
            var tip = side.Original.End + sum * (2 * toLeft / sum.LengthSquared);
            AddParallel(new(_at, tip));
            AddParallel(new(_at, next.ParallelStart));
        }
        else
        {
            AddParallel(new(_at, next.ParallelStart, Math.Tan(turn / 4)));
        }
    }

    /// <summary>Angle in radians from the way in to the way out, positive to the left.</summary>
    private static double Turn(Side side, Side next)
    {
        var sine = side.EndNormal.Cross(next.StartNormal);
        var cosine = side.EndNormal.Dot(next.StartNormal);
        var bends = side.Original.Curvature + next.Original.Curvature;
        // Turned back: to the left if the way out bends away to the right of the way in.
        if (cosine < 0 && Math.Abs(sine) <= CuspTurn && bends != 0)
            return bends < 0 ? Math.PI : -Math.PI;
        return Math.Atan2(sine, cosine);
    }

    private void AddParallel(Segment segment)
    {
        _parallels.Add(segment);
        _path.Add(segment);
        _at = segment.End;
    }

    private void LineTo(Point point)
    {
        if (point == _at)
            return;
        _path.Add(new(_at, point));
        _at = point;
    }

    /// <summary>One segment of a ring and its parallel.</summary>
    private readonly struct Side
    {
        internal Side(Segment original, double toLeft, Tolerance tolerance)
        {
            Original = original;
            var along = original.Chord.Unit();
            var b = original.Bulge;
            // Half the sweep is 2 atan(b).
            var grown = 1 + b * b;
            var across = along.Left * ((1 - b * b) / grown);
            StartNormal = across + along * (2 * b / grown);
            EndNormal = across - along * (2 * b / grown);
            ParallelStart = original.Start + StartNormal * toLeft;
            ParallelEnd = original.End + EndNormal * toLeft;
            HasCollapsed =
                !original.IsLine
                && original.Radius - Math.CopySign(toLeft, toLeft * b) <= tolerance.Merge;
        }

        internal Segment Original { get; }
        internal Vector StartNormal { get; }
        internal Vector EndNormal { get; }
        internal Point ParallelStart { get; }
        internal Point ParallelEnd { get; }

        /// <summary>Whether the radius of the parallel would be 0 or less.</summary>
        internal bool HasCollapsed { get; }

        /// <summary>Where the curve reaches this side.</summary>
        internal Point Entry => HasCollapsed ? Original.Start : ParallelStart;
    }
}
