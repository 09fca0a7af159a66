using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Checks that chips lie on the wood, and far enough from its edges. A pattern that does not say where its wood ends is not checked.</summary>
internal sealed class WoodCheck
{
    private readonly InspectionJob _job;
    private readonly ShapeSides? _wood;
    private readonly ExtentsGrid? _edges;

    internal WoodCheck(InspectionJob job)
    {
        _job = job;
        if (job.Layout.Wood.Count == 0)
            return;
        // A region turns rings as their places ask, so that the wood lies on the left of each edge.
        _wood = ShapeSides.Of(new Region(job.Layout.Wood).Contours);
        _edges = new([.. Enumerable.Range(0, _wood.Count).Select(edge => _wood.ExtentsOf(edge))]);
    }

    internal void Run()
    {
        if (_wood is null || _edges is null)
            return;
        var reach = Math.Max(_job.Limits.Edge, _job.Limits.EndGrainEdge);
        var near = new List<int>();
        for (var i = 0; i < _job.Layout.Chips.Count; i++)
        {
            var chip = _job.Layout.Chips[i];
            near.Clear();
            _edges.Visit(chip.Extents.Grown(reach), near.Add);
            if (near.Count == 0 && _wood.Surrounds(chip.Extents.Centre))
                continue;
            near.Sort();
            Look(i, chip, _wood, near);
        }
    }

    private void Look(int number, in LaidChip chip, ShapeSides wood, List<int> near)
    {
        var sides = _job.Layout.ShapeOf(chip).Sides.Placed(chip.Placement);
        if (OverlapScan.PlaceOutside(sides, wood, _job.Merge) is { } outside)
            AddOff(number, chip, sides, wood, outside);
        else
            LookNear(number, chip, sides, wood, near);
    }

    /// <summary>The way back is square to the edge next to the place that is off.</summary>
    private void AddOff(
        int number,
        in LaidChip chip,
        ShapeSides sides,
        ShapeSides wood,
        Point outside
    )
    {
        var edge = wood.Nearest(outside);
        var back = edge.Place - outside;
        var inwards = back.Length > _job.Merge ? back.Unit() : edge.Along.Left;
        var beyond = sides.ReachTowards(-inwards) + inwards.Dot(edge.Place - Point.Origin);
        _job.Found.Add(
            new(
                FindingKind.OffStock,
                number,
                -1,
                outside,
                beyond,
                0,
                LimitAt(edge.Along, chip),
                inwards
            )
        );
    }

    private void LookNear(
        int number,
        in LaidChip chip,
        ShapeSides sides,
        ShapeSides wood,
        List<int> near
    )
    {
        Occurrence? worst = null;
        var needs = new List<(Vector Away, double Lacking)>();
        foreach (var edge in near)
            for (var side = 0; side < sides.Count; side++)
            {
                var places = NearestFinder.Between(in sides.Side(side), in wood.Side(edge));
                ref readonly var frame = ref wood.Side(edge).Frame;
                var along = frame.TangentAt(frame.Foot(places.There));
                var limit = LimitAt(along, chip);
                var lacking = limit - places.Distance;
                if (lacking <= InspectionJob.Slack)
                    continue;
                var away = places.Here - places.There;
                needs.Add((places.Distance > _job.Merge ? away.Unit() : along.Left, lacking));
                if (
                    worst is { } known
                    && lacking <= known.Limit - known.Value + InspectionJob.Slack
                )
                    continue;
                worst = new(FindingKind.NearEdge, number, -1, places.Here, places.Distance, limit);
            }
        if (worst is not { } found)
            return;
        var move = ShortestMove.Of(needs) ?? Vector.Zero;
        _job.Found.Add(
            found with
            {
                Detail = move.Length,
                Direction = move.Length > 0 ? move.Unit() : move,
            }
        );
    }

    private double LimitAt(Vector edge, in LaidChip chip) =>
        _job.Stock.IsAcross(edge, chip.Grain) ? _job.Limits.EndGrainEdge : _job.Limits.Edge;
}
