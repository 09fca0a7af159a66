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

    private readonly InspectionJob _job;
    private readonly ExtentsGrid _grid;
    private readonly double _reach;
    private readonly Dictionary<PairKey, PairFacts> _known = [];
    private readonly Dictionary<(int Shape, long Scale), Neck[]> _ownNecks = [];
    private readonly RidgeJudge _ridges;
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
        _ridges = new(job, _grid);
        _points = new(job);
    }

    internal void Run()
    {
        _grid.VisitPairs((a, b) => Compare(Math.Min(a, b), Math.Max(a, b)));
        for (var i = 0; i < _job.Layout.Chips.Count; i++)
            LookWithin(i);
        // Tips round a plain centre come near two others; there no ridge runs between them.
        foreach (var (chip, other, necks) in _tipPairs)
            _ridges.Judge(
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
            _points.AddSide(
                placement.Apply(touch.At),
                Placed(placement, touch.Along),
                // Mirrored and walked the other way, it bends as before.
                touch.Curvature / placement.Scale,
                touch.IsOfSecond ? b : a
            );
        if (!Array.Exists(facts.Necks, neck => neck.IsBetweenTips))
        {
            _ridges.Judge(a, b, facts.Necks);
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
            _ridges.Judge(number, -1, necks);
    }
}
