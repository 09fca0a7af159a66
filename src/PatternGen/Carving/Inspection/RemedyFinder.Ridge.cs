using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Ridges that are too thin.</summary>
internal sealed partial class RemedyFinder
{
    /// <summary>Longer moves that are tried where the shortest brings the chips near each other elsewhere.</summary>
    private const int LongerMoves = 16;

    /// <summary>By how much each is longer than the one before, in mm.</summary>
    private const double LongerBy = 0.1;

    /// <summary>Either the ridge gets sharp, or wide enough; or it is only as thin as it may be along the grain.</summary>
    private IEnumerable<FoundRemedy> ForRidge()
    {
        if (_found.Other < 0)
        {
            if (_found.Value > 0)
                yield return Enlarged(0);
            yield break;
        }
        if (IsClearAfter(-_found.Value))
            yield return new(RemedyKind.MoveTogether, _found.Value, 0, Shared(-_found.Direction));
        yield return Moved(RemedyKind.MoveApart, Apart());
        if (_found.Value >= job.Limits.Ridge)
            foreach (var remedy in ForGrain(_found.Direction.Left))
                yield return remedy;
    }

    /// <summary>
    /// Along the way across the ridge; where other sides come near each other then, a little farther; and where chips hook
    /// into each other, as far as they are one past the other.
    /// </summary>
    private double Apart()
    {
        var least = Up(_found.Limit - _found.Value, 2);
        for (var i = 0; i < LongerMoves; i++)
            if (IsClearAfter(least + i * LongerBy))
                return least + i * LongerBy;
        var (one, other) = (SidesOf(_found.Chip), SidesOf(_found.Other));
        return WidestRidge
            + one.ReachTowards(_found.Direction)
            + other.ReachTowards(-_found.Direction);
    }

    private double WidestRidge => Math.Max(job.Limits.Ridge, job.Limits.RidgeAcrossGrain);

    private ShapeSides SidesOf(int number)
    {
        var chip = job.Layout.Chips[number];
        return job.Layout.ShapeOf(chip).Sides.Placed(chip.Placement);
    }

    /// <summary>Whether no ridge between the chips is too thin, and they do not overlap, once the second is moved away by so much.</summary>
    private bool IsClearAfter(double away)
    {
        var (one, other) = (job.Layout.Chips[_found.Chip], job.Layout.Chips[_found.Other]);
        var scale = one.Placement.Scale;
        var moved = other
            .Placement.Then(Transform.Move(_found.Direction * away))
            .Then(one.Placement.Inverse());
        var facts = PairScan.Between(
            job.Layout.ShapeOf(one).Sides,
            job.Layout.ShapeOf(other).Sides.Placed(moved),
            WidestRidge / scale,
            job.Merge / scale
        );
        return facts.Parting is null
            && Array.TrueForAll(facts.Necks, neck => !RidgeJudge.IsThin(job, one, neck));
    }
}
