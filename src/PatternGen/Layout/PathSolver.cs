using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Fits repeats to a path: cuts it at corners if they are to stay free, and chooses a number for each stretch.</summary>
internal sealed class PathSolver
{
    /// <summary>A rest this small, as a share of the length, is rounding.</summary>
    private const double Rounding = 1e-9;

    private readonly SegmentRun _path;
    private readonly PathSettings _settings;
    private readonly PathCorner[] _corners;
    private readonly PathTrouble _trouble;

    /// <summary>On a loop the number of repeats is a multiple of this, or the alternation would break where it closes.</summary>
    private readonly int _group = 1;

    internal PathSolver(SegmentRun path, PathSettings settings, int motifs)
    {
        _path = path;
        _settings = settings;
        _corners = PathCorner.Of(path, settings.LeastCorner);
        IsLoop = path.IsClosed && !(settings.StopsAtCorners && _corners.Length > 0);
        if (IsLoop)
            _group = settings.Sides == PathSides.Alternate && motifs % 2 != 0 ? 2 * motifs : motifs;
        _trouble = new(path, settings, IsLoop, _group);
    }

    private bool IsLoop { get; }

    internal PathPlan Solve()
    {
        _trouble.RefuseContradictions(Room);
        _trouble.RefuseTooMany();
        (double From, double To)[] spans = [.. Spans()];
        PathStretch[] stretches = [.. spans.Select(span => Fitted(span.From, span.To))];
        if (stretches.All(stretch => stretch.Repeats == 0))
            throw _trouble.NoRoom(
                spans.Max(span => span.To - span.From),
                LeastRepeats,
                Extra,
                spans.Length
            );
        var fit = new PathFit(
            _path.Length,
            _path.IsClosed,
            IsLoop,
            _settings.Spacing,
            stretches,
            _corners.Length,
            _settings.Corners == PathCorners.Motif ? _corners.Length : 0,
            _settings.Sides == PathSides.Both
        );
        return new(fit, _corners);
    }

    /// <summary>What comes on top of the repeats to make up the length: with one on each end, a spacing less.</summary>
    private int Extra => !IsLoop && _settings.OnEnds ? -1 : 0;

    private RepeatParity Parity => _group % 2 == 0 ? RepeatParity.Any : _settings.Parity;

    private int LeastRepeats => _group * Question(1).UpToParity(1 - Extra);

    private IEnumerable<(double From, double To)> Spans()
    {
        var length = _path.Length;
        if (IsLoop)
        {
            var start = _settings.Start ?? 0;
            start -= Math.Floor(start / length) * length;
            // A tiny negative start rounds up to the whole, which is the first corner again.
            if (start >= length)
                start = 0;
            return [(start, start + length)];
        }
        List<(double, double)> spans = [];
        var from = _settings.FirstMargin;
        if (_settings.StopsAtCorners)
            foreach (var corner in _corners)
            {
                if (!_path.IsClosed || corner != _corners[0])
                    spans.Add((from, corner.Length - Room(corner)));
                from = corner.Length + Room(corner);
            }
        spans.Add(
            _path.IsClosed
                ? (from, _corners[0].Length - Room(_corners[0]) + length)
                : (from, length - _settings.LastMargin)
        );
        return spans;
    }

    /// <summary>Length along the path that stays free at a corner; the parallel on its inside is shorter.</summary>
    private double Room(PathCorner corner)
    {
        var inside =
            _settings.Sides != PathSides.One || (_settings.Offset > 0) == (corner.Turn > 0);
        return _settings.Clearance + (inside ? Math.Abs(_settings.Offset) * corner.Shortening : 0);
    }

    private PathStretch Fitted(double from, double to)
    {
        var length = to - from;
        var question = Question(length);
        if (_settings.Corners == PathCorners.Motif && length < -_path.Tolerance.Merge)
            throw _trouble.CornersTooNear(from, length);
        if (_settings.IsExact)
            return Exactly(question, from, to);
        if (length < (LeastRepeats + Extra) * _settings.Min * (1 - Rounding))
            return new(from, to, 0, 0, from);
        if (question.Nearest() is not { } groups)
            throw _trouble.NoSpacing(question, from);
        var repeats = groups * _group;
        return Stretch(from, to, repeats, length / (repeats + Extra), 0);
    }

    private PathStretch Exactly(PitchQuestion question, double from, double to)
    {
        var repeats = to < from ? 0 : question.CountAt(_settings.Spacing * _group) * _group;
        if (repeats == 0)
            return new(from, to, 0, 0, from);
        var rest = to - from - (repeats + Extra) * _settings.Spacing;
        if (Math.Abs(rest) <= Rounding * _path.Length)
            rest = 0;
        if (IsLoop && rest != 0)
            throw _trouble.LoopDoesNotClose(question, repeats / _group);
        // A loop may be off by rounding; shared by all repeats it leaves no seam.
        var spacing = IsLoop ? (to - from) / repeats : _settings.Spacing;
        return Stretch(from, to, repeats, spacing, rest / 2);
    }

    private PathStretch Stretch(double from, double to, int repeats, double spacing, double rest)
    {
        var first = from + rest + (IsLoop || _settings.OnEnds ? 0 : spacing / 2);
        return new(from, to, repeats, spacing, first);
    }

    private PitchQuestion Question(double length) =>
        new(
            length,
            _settings.Spacing * _group,
            _settings.Min * _group,
            _settings.Max * _group,
            Parity,
            Extra
        );
}

/// <summary>Where repeats stand along a path.</summary>
/// <param name="Fit">The fit in words and figures.</param>
/// <param name="Corners">The corners of the path.</param>
internal sealed record PathPlan(PathFit Fit, IReadOnlyList<PathCorner> Corners);
