using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Works out what clears a finding, in numbers that are rounded to the safe side.</summary>
internal sealed partial class RemedyFinder(InspectionJob job, Occurrence[] alike)
{
    /// <summary>Directions of length 1 that differ by less are one: arithmetic tells them apart, not the printed degrees.</summary>
    private const double SameDirection = 1e-6;

    private readonly Occurrence _found = alike[0];

    internal IEnumerable<FoundRemedy> Find() =>
        _found.Kind switch
        {
            FindingKind.OffStock => [Moved(RemedyKind.Move, _found.Value + _found.Detail)],
            FindingKind.ChipsOverlap =>
            [
                Moved(
                    RemedyKind.MoveApart,
                    _found.Value + Math.Max(job.Limits.Ridge, job.Limits.RidgeAcrossGrain)
                ),
            ],
            FindingKind.TooDeepForStock => ForDepth(job.Stock.Thickness - job.Floor)
                .Concat(ForStock()),
            FindingKind.BeyondReach => ForDepth(_found.Limit)
                .Append(new(RemedyKind.LongerReach, Up(_found.Value, 1))),
            FindingKind.WiderThanBit => ForWidth(_found.Limit)
                .Append(new(RemedyKind.LargerBit, Up(_found.Value, 1))),
            FindingKind.OverComfortableDepth => ForDepth(_found.Limit),
            FindingKind.TooNarrow => [Enlarged(2 * _found.Detail)],
            FindingKind.TipTooSharp => [new(RemedyKind.OpenTip, _found.Limit)],
            FindingKind.HollowTooTight => ForHollow(),
            FindingKind.RidgeTooThin => ForRidge(),
            FindingKind.ShortGrain =>
            [
                new(RemedyKind.OpenRidge, _found.Limit),
                .. ForGrain(_found.Direction),
            ],
            FindingKind.TipsMeeting =>
            [
                new(RemedyKind.PlainCentre, job.Limits.PlainCentre),
                new(RemedyKind.FewerTips, _found.Limit),
            ],
            FindingKind.NearEdge => _found.Direction == Vector.Zero
                ? []
                : [Moved(RemedyKind.Move, _found.Detail)],
            FindingKind.OffRuledLine => ForRuledLine(),
            _ => [],
        };

    private FoundRemedy Moved(RemedyKind kind, double by) =>
        new(kind, Up(by, 2), 0, Shared(_found.Direction));

    /// <summary>A direction, or the opposite of one, that suits all that was found alike; else null: each place has its own.</summary>
    private Angle? Shared(Vector direction)
    {
        var isShared = Array.TrueForAll(
            alike,
            one => (one.Direction - _found.Direction).Length <= SameDirection
        );
        return isShared ? direction.Direction : null;
    }

    private FoundRemedy Enlarged(double width)
    {
        var factor = Up(_found.Limit / _found.Value, 3);
        return new(RemedyKind.Enlarge, factor, width * factor);
    }

    private IEnumerable<FoundRemedy> ForHollow()
    {
        yield return new(RemedyKind.FlatterCurve, _found.Limit);
        yield return Enlarged(0);
        if (job.Cutter is Knife && job.Limits.HollowRadius is null)
            yield return new(RemedyKind.NarrowerBlade, Down(_found.Value, 2));
    }

    /// <summary>The grain along a direction, if that suits all that was found alike.</summary>
    private IEnumerable<FoundRemedy> ForGrain(Vector along)
    {
        const double Near = 0.71;
        if (
            !Array.TrueForAll(
                alike,
                one => Math.Abs(one.Direction.Unit().Dot(_found.Direction)) > Near
            )
        )
            yield break;
        var degrees = Math.Round(along.Direction.Degrees, 1);
        yield return new(RemedyKind.TurnGrain, degrees < 0 ? degrees + 180 : degrees);
    }

    private IEnumerable<FoundRemedy> ForRuledLine()
    {
        if (_found.Direction != Vector.Zero)
            yield return Moved(RemedyKind.Move, _found.Detail);
        else
            yield return new(
                _found.Detail < 1 ? RemedyKind.Shrink : RemedyKind.Enlarge,
                _found.Detail
            );
    }

    /// <summary>Rounded up, but not for what arithmetic adds to a number that was round.</summary>
    private static double Up(double value, int decimals)
    {
        var tens = Math.Pow(10, decimals);
        return Math.Ceiling(value * tens - 1e-6) / tens;
    }

    private static double Down(double value, int decimals)
    {
        var tens = Math.Pow(10, decimals);
        return Math.Floor(value * tens + 1e-6) / tens;
    }
}
