using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds places where more tips come together than common practice allows without a plain centre.</summary>
internal sealed class TipCheck(
    InspectionJob job,
    Point[] points,
    int[] starts,
    (int Chip, int Corner)[] corners
)
{
    private readonly List<(Point At, int Chip, double Inside)> _tips = [];

    internal void Run()
    {
        for (var point = 0; point < points.Length; point++)
        for (var i = starts[point]; i < starts[point + 1]; i++)
        {
            var joint = job.Layout.ShapeOf(job.Layout.Chips[corners[i].Chip]).Corners[
                corners[i].Corner
            ];
            if (joint.IsTip)
                _tips.Add((points[point], corners[i].Chip, joint.Inside));
        }
        if (_tips.Count <= job.Limits.MostTips)
            return;
        var across = Math.Max(job.Limits.PlainCentre, job.Merge);
        var grid = new ExtentsGrid([.. _tips.Select(tip => Extents.Of(tip.At))]);
        var isTaken = new bool[_tips.Count];
        var around = new List<int>();
        Action<int> collect = around.Add;
        for (var tip = 0; tip < _tips.Count; tip++)
        {
            if (isTaken[tip])
                continue;
            around.Clear();
            grid.Visit(Extents.Of(_tips[tip].At).Grown(across + InspectionJob.Slack), collect);
            if (around.Count <= job.Limits.MostTips)
                continue;
            around.Sort();
            Look(tip, across, around, isTaken);
        }
    }

    private void Look(int tip, double across, List<int> around, bool[] isTaken)
    {
        var at = _tips[tip].At;
        var together = around.FindAll(number =>
            !isTaken[number] && _tips[number].At.DistanceTo(at) <= job.Merge
        );
        if (TryTake(together, isTaken))
            return;
        var near = around.FindAll(number =>
            !isTaken[number] && _tips[number].At.DistanceTo(at) <= across + InspectionJob.Slack
        );
        var circle = EnclosingCircle.Of([.. near.Select(number => _tips[number].At)]);
        if (circle.Radius < across / 2 - InspectionJob.Slack)
            TryTake(near, isTaken);
    }

    /// <summary>Takes tips that come together, if they are those of too many chips.</summary>
    private bool TryTake(List<int> together, bool[] isTaken)
    {
        int[] chips = [.. together.Select(number => _tips[number].Chip).Distinct()];
        if (chips.Length <= job.Limits.MostTips)
            return false;
        foreach (var number in together)
            isTaken[number] = true;
        job.Found.Add(
            new(
                FindingKind.TipsMeeting,
                chips.MinBy(number => job.Layout.Chips[number].Id),
                -1,
                MiddleOf(together),
                chips.Length,
                job.Limits.MostTips,
                double.RadiansToDegrees(together.Min(number => _tips[number].Inside)),
                All: chips
            )
        );
        return true;
    }

    private Point MiddleOf(List<int> tips)
    {
        var sum = Vector.Zero;
        foreach (var number in tips)
            sum += _tips[number].At - Point.Origin;
        return Point.Origin + sum / tips.Count;
    }
}
