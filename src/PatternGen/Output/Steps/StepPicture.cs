using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The picture of one step: what stood before faint, what is new strong, and the points that the step uses.</summary>
internal sealed class StepPicture
{
    /// <summary>Room round the drawing for labels, as a share of the picture's width.</summary>
    private const double Rim = 0.11;

    /// <summary>Half the size of the ticks at the ends of a setting, in mm.</summary>
    private const double Tick = 0.8;

    /// <summary>A needle's ring takes this share of a small circle that is drawn round it, to leave the circle to be seen.</summary>
    private const double ShareOfCircle = 0.4;

    private readonly CompassDrawing _drawing;
    private readonly CompassStep _step;
    private readonly IReadOnlyList<CompassStep> _before;
    private readonly Extents _frame;

    /// <summary>What of the drawing's plane the frame shows.</summary>
    private readonly Extents _window;
    private readonly Transform _placement;

    internal StepPicture(
        CompassDrawing drawing,
        CompassStep step,
        IReadOnlyList<CompassStep> before,
        Point corner,
        double width
    )
    {
        _drawing = drawing;
        _step = step;
        _before = before;
        _frame = new(corner - new Vector(0, width), corner + new Vector(width, 0));
        var seen = Seen();
        var scale = width * (1 - 2 * Rim) / Math.Max(seen.Width, seen.Height);
        _placement = Transform
            .Move(Point.Origin - seen.Centre)
            .Then(Transform.Resize(scale))
            .Then(Transform.Move(_frame.Centre - Point.Origin));
        var back = _placement.Inverse();
        _window = new(back.Apply(_frame.Min), back.Apply(_frame.Max));
    }

    internal void Write(SvgFile file, int number, string meaning)
    {
        var id = $"step-{number}";
        file.StartGroup(id, meaning, SvgStyle.Line(StepColours.Frame, 0.2));
        file.Paths.Closed(Contour.Rectangle(_frame.Min, _frame.Max).Span);
        file.EndGroup();
        Lines(file, $"{id}-guides", Before(PencilLine.Guide), StepColours.BeforeGuide, 0.12);
        Lines(file, $"{id}-lines", Before(PencilLine.Drawn), StepColours.Before, 0.2);
        Lines(file, $"{id}-new-guides", New(PencilLine.Guide), StepColours.New, 0.22);
        Lines(file, $"{id}-new-lines", New(PencilLine.Drawn), StepColours.New, 0.5);
        Setting(file, $"{id}-setting");
        MarkedPoint[] used = [.. Used()];
        var labels = new PointLabels(
            _frame,
            _placement.Apply(_drawing.Extents.Centre),
            [.. used.Select(Placed)],
            [.. Visible(_step.Drawn).SelectMany(line => line.Segments)]
        );
        // New points come first in the list, so that room for them is found first.
        var placed = used.ToDictionary(point => point, p => labels.Place(p.Label, Placed(p)));
        Points(file, $"{id}-points", used.Except(_step.Marked), StepColours.Ink, labels, placed);
        Points(file, $"{id}-new-points", _step.Marked, StepColours.New, labels, placed);
    }

    /// <summary>All that the step needs: the figure, the points that it uses and marks, and what it draws.</summary>
    private Extents Seen()
    {
        var seen = _drawing.Extents;
        foreach (var point in Used())
            seen = seen.Including(point.Point);
        foreach (var curve in _step.Drawn)
            if (!curve.Curve.IsCircle || curve.Line == PencilLine.Drawn)
                seen = seen.Including(curve.Curve.Extents);
        return seen;
    }

    private IEnumerable<DrawnCurve> Before(PencilLine line) =>
        _before.SelectMany(step => step.Drawn).Where(curve => curve.Line == line);

    private IEnumerable<DrawnCurve> New(PencilLine line) =>
        _step.Drawn.Where(curve => curve.Line == line);

    private IEnumerable<MarkedPoint> Used() =>
        _step
            .Marked.Concat(_step.Needles)
            .Concat(_step.From)
            .Concat(_step.To)
            .Concat(_step.Through is { } through ? [through] : [])
            .Distinct();

    /// <summary>What is seen of curves. Cut off before they are placed: a guide far larger than the figure has no place on the sheet.</summary>
    private IEnumerable<Chain> Visible(IEnumerable<DrawnCurve> curves) =>
        curves
            .DistinctBy(curve => curve.Curve)
            .SelectMany(curve => FrameClip.Inside(curve.Curve, _window))
            .Select(line => line.Transformed(_placement));

    private void Lines(
        SvgFile file,
        string id,
        IEnumerable<DrawnCurve> curves,
        string colour,
        double width
    )
    {
        Chain[] seen = [.. Visible(curves)];
        if (seen.Length == 0)
            return;
        file.StartGroup(id, null, SvgStyle.Line(colour, width));
        foreach (var chain in seen)
            file.Paths.Open(chain.Span);
        file.EndGroup();
    }

    /// <summary>Shows what the compass is set to: from point to point if it is taken off the drawing, else as a bar.</summary>
    private void Setting(SvgFile file, string id)
    {
        if (_step is not { Kind: StepKind.SetRadius, Setting: { } setting })
            return;
        var (from, to) =
            _step.From.Count > 0
                ? (Placed(_step.From[0]), Placed(_step.To[0]))
                : Bar(setting * _placement.Scale);
        var tick = (to - from).Unit().Left * Tick;
        file.StartGroup(id, null, SvgStyle.Line(StepColours.New, 0.3));
        file.Paths.Open(Chain.Line(from, to).Span);
        file.Paths.Open(Chain.Line(from - tick, from + tick).Span);
        file.Paths.Open(Chain.Line(to - tick, to + tick).Span);
        file.EndGroup();
    }

    /// <summary>A level bar in the middle of the picture, as long as the setting is there, or as there is room for.</summary>
    private (Point, Point) Bar(double length)
    {
        var half = new Vector(Math.Min(length, _frame.Width * (1 - Rim)) / 2, 0);
        return (_frame.Centre - half, _frame.Centre + half);
    }

    private Point Placed(MarkedPoint point) => _placement.Apply(point.Point);

    private void Points(
        SvgFile file,
        string id,
        IEnumerable<MarkedPoint> points,
        string colour,
        PointLabels labels,
        Dictionary<MarkedPoint, Label?> placed
    )
    {
        MarkedPoint[] marked = [.. points];
        if (marked.Length == 0)
            return;
        file.StartGroup(id, null, SvgStyle.Line(colour, 0.25));
        foreach (var point in marked)
        {
            var at = Placed(point);
            var mark = Math.Min(labels.MarkAt(at), ShareOfCircle * CircleRound(point));
            foreach (var arm in (Vector[])[new(mark, 0), new(0, mark)])
                file.Paths.Open(Chain.Line(at - arm, at + arm).Span);
            if (_step.Needles.Contains(point))
                file.Paths.Closed(new Circle(at, mark).ToContour().Span);
            if (placed[point] is { } label)
                file.Text(label, StepColours.PenWidth * label.Height);
        }
        file.EndGroup();
    }

    /// <summary>Radius in the picture of the circle that the step draws round a point; without end if it draws none.</summary>
    private double CircleRound(MarkedPoint point) =>
        _step.Drawn.Any(drawn => drawn.Curve.IsCircle && drawn.Needle == point)
            ? _step.Setting!.Value * _placement.Scale
            : double.PositiveInfinity;
}
