using System.Numerics;

namespace PatternGen.Tests.Compass;

/// <summary>
/// Draws a drawing again from its instructions alone, as a person would: it looks at kinds, labels, settings, counts and
/// choices, and at no coordinates but those of the points to begin from. Points of the plane are complex numbers here.
/// </summary>
internal sealed class Replay
{
    private const double Near = 1e-7;

    private readonly Dictionary<string, Complex> _points = [];
    private readonly Dictionary<DrawnCurve, Trace> _curves = new(
        ReferenceEqualityComparer.Instance
    );
    private readonly Func<double, double> _read;
    private double _setting;

    /// <param name="steps">The instructions.</param>
    /// <param name="read">How a measured setting is read; exactly by default.</param>
    internal Replay(IEnumerable<CompassStep> steps, Func<double, double>? read = null)
    {
        _read = read ?? (setting => setting);
        foreach (var step in steps)
            Follow(step);
    }

    internal IReadOnlyDictionary<string, Complex> Points => _points;

    internal IReadOnlyDictionary<DrawnCurve, Trace> Curves => _curves;

    /// <summary>By how far the last walk missed its start, along the circle; positive past it.</summary>
    internal double Miss { get; private set; }

    private void Follow(CompassStep step)
    {
        switch (step.Kind)
        {
            case StepKind.Mark:
                var datum = step.Marked[0];
                Mark(datum, new(datum.Point.X, datum.Point.Y));
                break;
            case StepKind.MarkOnCircle:
                var circle = Circle(step.Curves[0]);
                var direction = Complex.FromPolarCoordinates(1, step.Direction!.Value.Radians);
                Mark(step.Marked[0], circle.Centre + circle.Radius * direction);
                break;
            case StepKind.SetRadius:
                _setting =
                    step.From.Count > 0
                        ? Complex.Abs(At(step.To[0]) - At(step.From[0]))
                        : _read(step.Setting!.Value);
                break;
            case StepKind.Circle:
                Draw(step, step.Needles.Select(needle => Trace.Circle(At(needle), _setting)));
                break;
            case StepKind.Arc:
                Draw(
                    step,
                    step.Needles.Select(
                        (needle, i) => Trace.Arc(At(needle), At(step.From[i]), At(step.To[i]))
                    )
                );
                break;
            case StepKind.Walk:
                Walk(step);
                break;
            case StepKind.Cut:
                Cut(step);
                break;
            case StepKind.CrossArcs:
                CrossArcs(step);
                break;
            case StepKind.Cross:
                for (var i = 0; i < step.Marked.Count; i++)
                    Mark(
                        step.Marked[i],
                        Choose(_curves[step.Curves[i]], _curves[step.OtherCurves[i]], step.Choice)
                    );
                break;
            case StepKind.Bisect:
                Bisect(step);
                break;
            case StepKind.BisectArc:
                BisectArc(step);
                break;
            case StepKind.Perpendicular:
                Perpendicular(step);
                break;
            case StepKind.Join:
                Draw(step, step.From.Select((from, i) => Trace.Line(At(from), At(step.To[i]))));
                break;
            case StepKind.Extend:
                Extend(step);
                break;
            case StepKind.DivideLine:
                DivideLine(step);
                break;
            case StepKind.GoOver:
                GoOver(step);
                break;
            default:
                throw new NotSupportedException($"No person knows how to do {step.Kind}.");
        }
    }

    /// <summary>Each step from where the last one ended, as the legs of the dividers go.</summary>
    private void Walk(CompassStep step)
    {
        var circle = Circle(step.Curves[0]);
        var start = At(step.From[0]);
        var at = start;
        var marks = 0;
        for (var i = 1; i <= step.Count; i++)
        {
            // The setting as a chord; the two circles cross ahead, counter-clockwise.
            var half = Math.Asin(Math.Min(1, _setting / (2 * circle.Radius)));
            at = circle.Centre + (at - circle.Centre) * Complex.FromPolarCoordinates(1, 2 * half);
            if (i % step.Every == 0 && marks < step.Marked.Count)
                Mark(step.Marked[marks++], at);
        }
        marks.ShouldBe(step.Marked.Count);
        Miss = ((at - circle.Centre) / (start - circle.Centre)).Phase * circle.Radius;
    }

    private void Cut(CompassStep step)
    {
        var needle = At(step.Needles[0]);
        var at = Choose(_curves[step.Curves[0]], Trace.Circle(needle, _setting), step.Choice);
        Mark(step.Marked[0], at);
        Draw(step, [Trace.Tick(needle, at)]);
    }

    private void CrossArcs(CompassStep step)
    {
        List<Trace> ticks = [];
        for (var i = 0; i < step.From.Count; i++)
        {
            var (from, to) = (At(step.From[i]), At(step.To[i]));
            var at = Crossing(from, to, _setting, step.Side!.Value);
            Mark(step.Marked[i], at);
            ticks.AddRange([Trace.Tick(from, at), Trace.Tick(to, at)]);
        }
        Draw(step, ticks);
    }

    private void Bisect(CompassStep step)
    {
        var (from, to) = (At(step.From[0]), At(step.To[0]));
        var left = Crossing(from, to, _setting, LineSide.Left);
        var right = Crossing(from, to, _setting, LineSide.Right);
        Mark(step.Marked[0], Meet(left, right, from, to));
        Draw(step, [Trace.Line(left, right), .. Ticks(from, to, left, right)]);
    }

    private void BisectArc(CompassStep step)
    {
        var (from, to) = (At(step.From[0]), At(step.To[0]));
        var left = Crossing(from, to, _setting, LineSide.Left);
        var right = Crossing(from, to, _setting, LineSide.Right);
        var circle = Circle(step.Curves[0]);
        var far = 10 * (right - left) / Complex.Abs(right - left) * circle.Radius;
        var ruler = Trace.Line(circle.Centre, circle.Centre + far);
        // The straightedge on the crossings goes through the centre, or the points were not on the circle.
        Math.Abs(Trace.LeftBy(circle.Centre, left, right)).ShouldBeLessThan(1e-9 * circle.Radius);
        Mark(step.Marked[0], ruler.Crossings(circle).Single());
        Draw(step, Ticks(from, to, left, right));
    }

    private void Perpendicular(CompassStep step)
    {
        var needle = At(step.Needles[0]);
        var line = _curves[step.Curves[0]];
        var along = (line.End - line.Start) / Complex.Abs(line.End - line.Start);
        var whole = Trace.Line(line.Start - 1e4 * along, line.End + 1e4 * along);
        var cuts = whole.Crossings(Trace.Circle(needle, _setting));
        if ((Complex.Conjugate(along) * (cuts[1] - cuts[0])).Real < 0)
            cuts.Reverse();
        var opened = Complex.Abs(cuts[1] - cuts[0]);
        var left = Crossing(cuts[0], cuts[1], opened, LineSide.Left);
        var right = Crossing(cuts[0], cuts[1], opened, LineSide.Right);
        var height = Trace.LeftBy(needle, line.Start, line.End);
        // Who follows the step sees by its letter where the line stands; no eye tells a point next to a line from one on it.
        var isOnLine = step.Marked[0].Label == step.Needles[0].Label;
        if (isOnLine)
            height.ShouldBe(0, Near);
        var (near, beyond) = height < 0 && !isOnLine ? (right, left) : (left, right);
        Mark(step.Marked[0], isOnLine ? needle : Meet(left, right, cuts[0], cuts[1]));
        Draw(
            step,
            [
                Trace.Line(isOnLine ? near : needle, beyond),
                .. cuts.Select(cut => Trace.Tick(needle, cut)),
                .. cuts.Select(cut => Trace.Tick(cut, near)),
                .. cuts.Select(cut => Trace.Tick(cut, beyond)),
            ]
        );
        _setting = opened;
    }

    private void Extend(CompassStep step)
    {
        List<Trace> lines = [];
        for (var i = 0; i < step.From.Count; i++)
        {
            var (from, through) = (At(step.From[i]), At(step.To[i]));
            var ruler = Trace.Line(from, from + 1e3 * (through - from));
            var end = ruler
                .Crossings(_curves[step.Curves[0]])
                .MaxBy(place => Complex.Abs(place - from));
            Mark(step.Marked[i], end);
            lines.Add(Trace.Line(from, end));
        }
        Draw(step, lines);
    }

    private void DivideLine(CompassStep step)
    {
        _setting = _read(step.Setting!.Value);
        var (at, to) = (At(step.From[0]), At(step.To[0]));
        foreach (var mark in step.Marked)
            Mark(mark, at += _setting * (to - at) / Complex.Abs(to - at));
        Miss = _setting - Complex.Abs(to - at);
    }

    private void GoOver(CompassStep step)
    {
        Trace[] limits = [.. step.OtherCurves.Select(curve => _curves[curve])];
        Draw(step, step.Curves.Select((curve, i) => _curves[curve].UpTo(At(step.From[i]), limits)));
    }

    private static Complex Crossing(Complex from, Complex to, double setting, LineSide side)
    {
        var way = to - from;
        // The corner of an isosceles triangle: cos of its base angle is half the base over the leg.
        var turn = Math.Acos(Complex.Abs(way) / 2 / setting);
        return from
            + way
                / Complex.Abs(way)
                * Complex.FromPolarCoordinates(setting, side == LineSide.Left ? turn : -turn);
    }

    /// <summary>Where two lines meet, by Cramer's rule.</summary>
    private static Complex Meet(Complex a, Complex b, Complex c, Complex d)
    {
        var (one, other) = (b - a, d - c);
        var share =
            (Complex.Conjugate(c - a) * other).Imaginary
            / (Complex.Conjugate(one) * other).Imaginary;
        return a + share * one;
    }

    private Complex Choose(Trace one, Trace other, CrossingChoice? choice)
    {
        var places = one.Crossings(other);
        if (choice is null)
            return places.Single();
        var from = At(choice.From);
        return choice.Rule switch
        {
            CrossingRule.Nearest => places.MinBy(place => Complex.Abs(place - from)),
            CrossingRule.Farthest => places.MaxBy(place => Complex.Abs(place - from)),
            CrossingRule.Left => places.Single(place =>
                Trace.LeftBy(place, from, At(choice.To!)) > Near
            ),
            _ => places.Single(place => Trace.LeftBy(place, from, At(choice.To!)) < -Near),
        };
    }

    private static IEnumerable<Trace> Ticks(
        Complex from,
        Complex to,
        Complex left,
        Complex right
    ) =>
        [
            Trace.Tick(from, left),
            Trace.Tick(to, left),
            Trace.Tick(from, right),
            Trace.Tick(to, right),
        ];

    private Complex At(MarkedPoint point) => _points[point.Label];

    private Trace Circle(DrawnCurve curve) => _curves[curve];

    /// <summary>A point that has its mark keeps it.</summary>
    private void Mark(MarkedPoint point, Complex at) => _points.TryAdd(point.Label, at);

    private void Draw(CompassStep step, IEnumerable<Trace> traces)
    {
        Trace[] drawn = [.. traces];
        drawn.Length.ShouldBe(step.Drawn.Count);
        for (var i = 0; i < drawn.Length; i++)
            _curves.Add(step.Drawn[i], drawn[i]);
    }
}
