using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Fits a band to a length: chooses the number of repeats and places the parts.</summary>
internal sealed class FitSolver
{
    private readonly TriangleBand _band;
    private readonly Fitting _fitting;
    private readonly FitTrouble _trouble;
    private readonly int _parts;
    private readonly double _carved;

    /// <param name="length">The whole length in mm, margins included.</param>
    /// <param name="band">The band.</param>
    /// <param name="fitting">How it is to be fitted.</param>
    /// <param name="place">Where a distance from the start lies, for messages; on the x axis if not given.</param>
    internal FitSolver(
        double length,
        TriangleBand band,
        Fitting fitting,
        Func<double, Point>? place = null
    )
    {
        _band = band;
        _fitting = fitting;
        _parts = fitting.Centre is null ? 1 : 2;
        _carved = length - fitting.LeftMargin - fitting.RightMargin;
        Question = Ask();
        _trouble = new(length, fitting, Question, _parts, place ?? (x => new(x, 0)));
        _trouble.RefuseContradictions();
        _trouble.RefuseNoRoom();
    }

    /// <summary>What the length of one part asks of the pitch.</summary>
    internal PitchQuestion Question { get; }

    private bool IsShifted =>
        _fitting.StaggeredEnds == StaggeredEnds.Shifted && _band.Rows.Any(row => row.IsStaggered);

    /// <summary>Fits whole repeats, on the grid if one is asked for.</summary>
    internal BandPlan Solve()
    {
        if (_fitting.PitchStep is { } step)
            return AtPitch(_trouble.PitchOnGrid(step));
        if (Question.Nearest() is not { } repeats)
            throw _trouble.NoPitch();
        return Plan(repeats, Question.PitchFor(repeats), leftOver: 0);
    }

    /// <summary>Fits as many repeats of a given pitch as there is room for; the ends share the rest.</summary>
    internal BandPlan AtPitch(double pitch)
    {
        var repeats = Question.CountAt(pitch);
        if (repeats == 0)
            throw _trouble.NoRepeat(pitch);
        var leftOver = Question.Length - (repeats + Question.Extra) * pitch;
        // A rest below the merge distance is rounding: the band ends where the length ends.
        var isRounding = leftOver <= Tolerance.ForExtent(Question.Length).Merge;
        return Plan(repeats, pitch, isRounding ? 0 : leftOver);
    }

    private PitchQuestion Ask()
    {
        var parity =
            _fitting.Ends == EndRule.TurnedAtMiddle && _parts == 1
                ? RepeatParity.Even
                : _fitting.Parity;
        var length = _parts == 1 ? _carved : (_carved - _fitting.CentreWidth) / 2;
        return _fitting.Ask(length, _band, parity, IsShifted ? 0.5 : 0);
    }

    private BandPlan Plan(int repeats, double pitch, double leftOver)
    {
        if (_band.Rows.All(row => WholeChips(row, repeats) == LeftOutAtMiddle(row, repeats)))
            throw _trouble.NoChips();
        // Beside a centre motif each band gives its rest to its outer end; alone, to both ends alike.
        var atEachEnd = _parts == 1 ? leftOver / 2 : leftOver;
        var leftMargin = _fitting.LeftMargin + atEachEnd;
        var rightMargin = _fitting.RightMargin + atEachEnd;
        var length = Question.Length - leftOver;
        var halves = 2 * repeats + (IsShifted ? 1 : 0);
        Stations left = new(leftMargin, length, halves);
        Stations right = new(leftMargin + length + _fitting.CentreWidth, length, halves);
        return new(
            new(
                _parts,
                repeats,
                pitch,
                Question.Nominal,
                leftMargin,
                rightMargin,
                Ends(),
                _band.Rows.Sum(row => LeftOutAtMiddle(row, repeats))
            ),
            _parts == 1 ? [left] : [left, right],
            IsShifted
        );
    }

    /// <summary>Whole chips that a row has room for; half chips come on top of a staggered row's.</summary>
    private int WholeChips(TriangleRow row, int repeats)
    {
        if (!row.IsStaggered || IsShifted)
            return repeats;
        return _fitting.StaggeredEnds == StaggeredEnds.HalfChips ? repeats : repeats - 1;
    }

    /// <summary>A leaning chip can't stand astride the middle where the band turns round.</summary>
    private int LeftOutAtMiddle(TriangleRow row, int repeats)
    {
        var turns = _fitting.Ends == EndRule.TurnedAtMiddle && _parts == 1;
        return turns && row.IsStaggered && !row.IsUpright && repeats > 0 ? 1 : 0;
    }

    private EndMatch Ends()
    {
        var mirrored =
            _parts == 2
            || _fitting.Ends == EndRule.TurnedAtMiddle
            || (_band.Rows.All(row => row.IsUpright) && !IsShifted);
        if (mirrored && _fitting.Ends != EndRule.HalfTurn)
            return EndMatch.Alike;
        var turned = _parts == 1 && BandSymmetry.HasHalfTurn(_band, swapsPhases: IsShifted);
        _trouble.RefuseUnmatchedEnds(mirrored, turned, IsShifted);
        return turned ? EndMatch.AlikeByHalfTurn : EndMatch.Different;
    }
}
