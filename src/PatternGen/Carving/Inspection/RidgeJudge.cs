using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Judges the ground between two chips, where it is narrow.</summary>
/// <param name="job">The inspection.</param>
/// <param name="grid">Tells which chips may lie in between.</param>
internal sealed class RidgeJudge(InspectionJob job, ExtentsGrid grid)
{
    /// <summary>Share of the way across a neck that is left out at either end when looking for a chip in between: others may end there too.</summary>
    private const double EndShare = 0.1;

    /// <summary>Takes the worst of the places where the ground between two chips is thin.</summary>
    internal void Judge(int a, int b, IEnumerable<Neck> necks)
    {
        var chip = job.Layout.Chips[a];
        Occurrence? worst = null;
        var most = 0.0;
        foreach (var neck in necks)
        {
            var (here, there, across) = Placed(job, chip, neck);
            var width = here.DistanceTo(there);
            var limit = LimitOf(job, chip, across);
            var lacking = (limit - width) / limit;
            if (
                width >= limit - InspectionJob.Slack
                || lacking <= most
                || IsFilled(a, b, here, there)
            )
                continue;
            most = lacking;
            worst = new(
                FindingKind.RidgeTooThin,
                a,
                b,
                here.Towards(there, 0.5),
                width,
                limit,
                0,
                width > job.Merge
                    ? across.Unit()
                    : (job.Layout.Chips[b == -1 ? a : b].Extents.Centre - here).Unit()
            );
        }
        if (worst is { } found)
            job.Found.Add(found);
    }

    /// <summary>Whether the ground at a neck is too thin, whatever lies in between.</summary>
    internal static bool IsThin(InspectionJob job, in LaidChip chip, Neck neck)
    {
        var (here, there, across) = Placed(job, chip, neck);
        return here.DistanceTo(there) < LimitOf(job, chip, across) - InspectionJob.Slack;
    }

    /// <summary>The ends of a neck on the wood, and the way across it; zero if they touch: such sides have a common tangent, along which the ridge runs.</summary>
    private static (Point Here, Point There, Vector Across) Placed(
        InspectionJob job,
        in LaidChip chip,
        Neck neck
    )
    {
        var (here, there) = (chip.Placement.Apply(neck.Here), chip.Placement.Apply(neck.There));
        return (here, there, here.DistanceTo(there) > job.Merge ? there - here : Vector.Zero);
    }

    /// <summary>The ridge runs square to the way across it.</summary>
    private static double LimitOf(InspectionJob job, in LaidChip chip, Vector across) =>
        across.LengthSquared > 0 && InspectionJob.IsAcrossGrain(chip, across.Left)
            ? job.Limits.RidgeAcrossGrain
            : job.Limits.Ridge;

    /// <summary>
    /// Whether a third chip lies in between, so that there is no ridge from one to the other; or touches both, so that they
    /// are the ends of one of its sides, as round a plain centre.
    /// </summary>
    private bool IsFilled(int a, int b, Point here, Point there)
    {
        var across = new Segment(here, there);
        var filled = false;
        grid.Visit(
            across.Extents,
            other => filled |= other != a && other != b && Fills(other, across)
        );
        return filled;
    }

    private bool Fills(int number, Segment across)
    {
        var chip = job.Layout.Chips[number];
        var merge = job.Merge / chip.Placement.Scale;
        if (!chip.Extents.Grown(job.Merge).Touches(across.Extents))
            return false;
        var sides = job.Layout.ShapeOf(chip).Sides;
        var local = across.Transformed(chip.Placement.Inverse());
        if (sides.Holds(local.Middle, 0))
            return true;
        if (sides.DistanceTo(local.Start) <= merge && sides.DistanceTo(local.End) <= merge)
            return true;
        var inner = new SegmentFrame(
            new(local.Start.Towards(local.End, EndShare), local.End.Towards(local.Start, EndShare))
        );
        for (var i = 0; i < sides.Count; i++)
            if (NearestFinder.Between(in inner, in sides.Side(i)).Distance <= merge)
                return true;
        return false;
    }
}
