using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Puts pieces together to runs of lines and arcs, in millimetres.</summary>
internal sealed class SvgRunBuilder(ImportedCurves curves)
{
    private readonly List<Segment> _segments = [];

    // Béziers that follow one another, to be drawn as one curve: its start, and three points for each piece.
    private readonly List<Point> _beziers = [];
    private Point _start;
    private double _squash;
    private bool _isFree;

    /// <summary>Where the element is in the file.</summary>
    internal string Where { get; set; } = "";

    /// <summary>Where the run has come to.</summary>
    internal Point At { get; private set; }

    /// <summary>How far what was drawn may lie off the file, in mm.</summary>
    internal double Accuracy { get; private set; }

    internal void Start(Point point) => At = _start = point;

    internal void LineTo(Point point)
    {
        DrawBeziers();
        Draw(point, bulge: 0);
    }

    internal void CubicTo(Point control1, Point control2, Point point)
    {
        // A piece that stands still has no direction.
        if (control1 == At && control2 == At && point == At)
            return;
        if (_beziers.Count == 0)
            _beziers.Add(At);
        _beziers.AddRange([control1, control2, point]);
        At = point;
    }

    /// <summary>Draws an arc of at most a half turn.</summary>
    /// <param name="radius">Its radius; one that does not reach is taken for half the chord.</param>
    /// <param name="isLeft">Whether it turns left.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="squash">How far it is off, being a little elliptic.</param>
    internal void ArcTo(double radius, bool isLeft, Point end, double squash)
    {
        DrawBeziers();
        _squash = Math.Max(_squash, squash);
        // The sine of half the sweep; the tangent of a quarter of it follows.
        var sine = Math.Min(1, At.DistanceTo(end) / (2 * radius));
        var bulge = sine / (1 + Math.Sqrt((1 - sine) * (1 + sine)));
        Draw(end, isLeft ? bulge : -bulge);
    }

    /// <param name="ellipse">The arc; null if it is flat.</param>
    /// <param name="end">Where it ends.</param>
    internal void EllipseTo(EllipseArc? ellipse, Point end)
    {
        DrawBeziers();
        if (ellipse is { } arc)
            Follow(arc.ToCurve(), end, "ellipse drawn with arcs");
        else
            Draw(end, bulge: 0);
    }

    /// <summary>Ends the run and adds it to the drawing, if there is anything of it.</summary>
    /// <param name="isClosed">Whether it goes back to where it started.</param>
    /// <param name="rounding">How far the numbers of the file may have been moved, in mm.</param>
    internal void Finish(bool isClosed, double rounding)
    {
        DrawBeziers();
        if (_segments.Count > 0 && SvgRuns.Of(_segments, isClosed, rounding) is var (run, moved))
        {
            curves.Add(run, Where);
            var free = _isFree ? curves.Settings.Accuracy : 0;
            Accuracy = Math.Max(Accuracy, moved + _squash + free);
        }
        _segments.Clear();
        (_squash, _isFree) = (0, false);
        At = _start;
    }

    private void DrawBeziers()
    {
        if (_beziers.Count == 0)
            return;
        var end = At;
        At = _beziers[0];
        Follow(FreeCurve.BezierPath(_beziers), end, "free curve drawn with arcs");
        _beziers.Clear();
    }

    private void Follow(FreeCurve curve, Point end, string change)
    {
        // What is smaller than the accuracy has nothing to follow.
        if (At == end && curve.Length <= curves.Settings.Accuracy)
            return;
        try
        {
            var chain = curve.ToChain(curves.Settings.Accuracy);
            // Ends are those of the file, to the last digit, so that what follows goes on from there.
            for (var i = 0; i < chain.Count; i++)
                Draw(i < chain.Count - 1 ? chain.At(i).End : end, chain.At(i).Bulge);
            if (chain.Count == 1 && chain.At(0).IsLine)
                return;
        }
        catch (PatternException refusal)
        {
            throw new ImportException(refusal.Message, Where, refusal.Remedies, refusal);
        }
        curves.Check(_segments.Count, Where);
        _isFree = true;
        curves.Note(ImportNoteKind.Changed, change, Where);
    }

    private void Draw(Point end, double bulge)
    {
        if (end != At)
            _segments.Add(new(At, end, bulge));
        At = end;
    }
}
