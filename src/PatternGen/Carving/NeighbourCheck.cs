using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Checks of chips beside each other: whether they overlap, and what stands between them.</summary>
/// <remarks>
/// A grid over the chips' extents tells which may be near, so that the work grows with the number of chips. How two
/// chips lie to each other is worked out once for all pairs that lie alike.
/// </remarks>
internal sealed class NeighbourCheck
{
    /// <summary>So many different ways to lie are remembered in any case; more only while most pairs lie as others did.</summary>
    private const int AlwaysKnown = 1000;

    /// <summary>Share of the way across a neck that is left out at either end when looking for a chip in between: others may end there too.</summary>
    private const double EndShare = 0.1;

    private readonly InspectionJob _job;
    private readonly ExtentsGrid _grid;
    private readonly double _reach;
    private readonly Dictionary<PairKey, PairFacts> _known = [];
    private readonly Dictionary<(int Shape, long Scale), Neck[]> _ownNecks = [];
    private readonly MeetingPoints _points;
    private int _recognized;

    /// <summary>For each tip near another one how many others are.</summary>
    private readonly Dictionary<(int Chip, int Corner), int> _nearTips = [];

    /// <summary>Pairs that tips of both come near each other, to be judged when the tips are counted.</summary>
    private readonly List<(int Chip, int Other, Neck[] Necks)> _tipPairs = [];

    internal NeighbourCheck(InspectionJob job)
    {
        _job = job;
        _reach = Math.Max(job.Limits.Ridge, job.Limits.RidgeAcrossGrain);
        // Extents grown by half the reach touch where the chips may be within the reach.
        var half = _reach / 2 + job.Merge;
        _grid = new([.. job.Layout.Chips.Select(chip => chip.Extents.Grown(half))]);
        _points = new(job);
    }

    internal void Run()
    {
        _grid.VisitPairs((a, b) => Compare(Math.Min(a, b), Math.Max(a, b)));
        for (var i = 0; i < _job.Layout.Chips.Count; i++)
            LookWithin(i);
        // Tips round a plain centre come near two others; there no ridge runs between them.
        foreach (var (chip, other, necks) in _tipPairs)
            JudgeNecks(
                chip,
                other,
                necks.Where(neck =>
                    !neck.IsBetweenTips
                    || (
                        _nearTips[(chip, neck.Corner)] == 1
                        && _nearTips[(other, neck.OtherCorner)] == 1
                    )
                )
            );
        _points.Run();
    }

    private void Compare(int a, int b)
    {
        var (first, second) = (_job.Layout.Chips[a], _job.Layout.Chips[b]);
        var scale = first.Placement.Scale;
        var between = second.Placement.Then(first.Placement.Inverse());
        var key = PairKey.Of(first, second, scale, between);
        if (!_known.TryGetValue(key, out var facts))
        {
            facts = PairScan.Between(
                _job.Layout.ShapeOf(first).Sides,
                _job.Layout.ShapeOf(second).Sides.Placed(between),
                _reach / scale,
                _job.Merge / scale
            );
            if (_known.Count < Math.Max(AlwaysKnown, _recognized))
                _known.Add(key, facts);
        }
        else
            _recognized++;
        if (!ReferenceEquals(facts, PairFacts.Apart))
            Judge(a, b, facts);
    }

    private void Judge(int a, int b, PairFacts facts)
    {
        var placement = _job.Layout.Chips[a].Placement;
        if (facts.Parting is { } parting)
        {
            var move = placement.Apply(parting);
            var between = _job
                .Layout.Chips[a]
                .Extents.Centre.Towards(_job.Layout.Chips[b].Extents.Centre, 0.5);
            _job.Found.Add(
                new(FindingKind.ChipsOverlap, a, b, between, move.Length, 0, 0, move.Unit())
            );
            return;
        }
        foreach (var touch in facts.Touches)
            _points.AddSide(placement.Apply(touch.At), Placed(placement, touch.Along));
        if (!Array.Exists(facts.Necks, neck => neck.IsBetweenTips))
        {
            JudgeNecks(a, b, facts.Necks);
            return;
        }
        _tipPairs.Add((a, b, facts.Necks));
        foreach (var neck in facts.Necks)
            if (neck.IsBetweenTips)
                CountTips(a, b, neck);
    }

    /// <summary>A direction with the chip on the left, as a transform places it.</summary>
    private static Vector Placed(Transform placement, Vector along)
    {
        var placed = placement.Apply(along);
        return placement.IsMirrored ? -placed : placed;
    }

    private void CountTips(int a, int b, Neck neck)
    {
        foreach (var tip in ((int, int)[])[(a, neck.Corner), (b, neck.OtherCorner)])
            _nearTips[tip] = _nearTips.GetValueOrDefault(tip) + 1;
    }

    /// <summary>Takes the worst of the places where the ground between two chips is thin.</summary>
    private void JudgeNecks(int a, int b, IEnumerable<Neck> necks)
    {
        var chip = _job.Layout.Chips[a];
        Occurrence? worst = null;
        var most = 0.0;
        foreach (var neck in necks)
        {
            var (here, there) = (chip.Placement.Apply(neck.Here), chip.Placement.Apply(neck.There));
            var width = here.DistanceTo(there);
            // Touching sides have a common tangent, along which the ridge runs.
            var across = width > _job.Merge ? there - here : Vector.Zero;
            var limit = LimitOf(chip, across);
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
                width > _job.Merge
                    ? across.Unit()
                    : (_job.Layout.Chips[b == -1 ? a : b].Extents.Centre - here).Unit()
            );
        }
        if (worst is { } found)
            _job.Found.Add(found);
    }

    /// <summary>The ridge runs square to the way across it.</summary>
    private double LimitOf(in LaidChip chip, Vector across) =>
        across.LengthSquared > 0 && InspectionJob.IsAcrossGrain(chip, across.Left)
            ? _job.Limits.RidgeAcrossGrain
            : _job.Limits.Ridge;

    /// <summary>Whether a third chip lies in between, so that there is no ridge from one to the other.</summary>
    private bool IsFilled(int a, int b, Point here, Point there)
    {
        var across = new Segment(here.Towards(there, EndShare), there.Towards(here, EndShare));
        var filled = false;
        _grid.Visit(
            across.Extents,
            other => filled |= other != a && other != b && Meets(other, across)
        );
        return filled;
    }

    private bool Meets(int number, Segment across)
    {
        var chip = _job.Layout.Chips[number];
        if (!chip.Extents.Touches(across.Extents))
            return false;
        var sides = _job.Layout.ShapeOf(chip).Sides;
        var local = across.Transformed(chip.Placement.Inverse());
        var frame = new SegmentFrame(local);
        if (sides.Holds(local.Middle, 0))
            return true;
        for (var i = 0; i < sides.Count; i++)
            if (
                NearestFinder.Between(in frame, in sides.Side(i)).Distance
                <= _job.Merge / chip.Placement.Scale
            )
                return true;
        return false;
    }

    /// <summary>Ground that one chip goes round: tongues, and what stands in its holes.</summary>
    private void LookWithin(int number)
    {
        var chip = _job.Layout.Chips[number];
        var sides = _job.Layout.ShapeOf(chip).Sides;
        // Three sides have no two that are not neighbours.
        if (sides.Count < 4)
            return;
        var scale = chip.Placement.Scale;
        var key = (chip.Shape, PairKey.Rounded(scale));
        if (!_ownNecks.TryGetValue(key, out var necks))
            _ownNecks.Add(key, necks = PairScan.Within(sides, _reach / scale, _job.Merge / scale));
        if (necks.Length > 0)
            JudgeNecks(number, -1, necks);
    }
}
