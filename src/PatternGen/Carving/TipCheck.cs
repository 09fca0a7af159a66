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
            var joint = job.Layout.ShapeOf(job.Layout.Chips[corners[i].Chip]).Corners[corners[i].Corner];
            if (joint.IsTip)
                _tips.Add((points[point], corners[i].Chip, joint.Inside));
        }
        if (_tips.Count <= job.Limits.MostTips)
            return;
        var across = Math.Max(job.Limits.PlainCentre, job.Merge);
        var cells = _tips
            .Select((tip, number) => (Cell: CellOf(tip.At, across), Number: number))
            .ToLookup(tip => tip.Cell, tip => tip.Number);
        var isTaken = new bool[_tips.Count];
        for (var tip = 0; tip < _tips.Count; tip++)
            if (!isTaken[tip])
                Look(tip, across, cells, isTaken);
    }

    private void Look(
        int tip,
        double across,
        ILookup<(long X, long Y), int> cells,
        bool[] isTaken
    )
    {
        var most = job.Limits.MostTips;
        if (Around(_tips[tip].At, across, cells) is not { } near || near.Count <= most)
            return;
        // Of tips round a centre, the middle of all that are near one is that centre.
        var centre = MiddleOf(near);
        var radius = Math.Max(across / 2 - InspectionJob.Slack, job.Merge);
        near.RemoveAll(number => isTaken[number] || _tips[number].At.DistanceTo(centre) >= radius);
        if (near.Count <= most)
            return;
        foreach (var number in near)
            isTaken[number] = true;
        job.Found.Add(
            new(
                FindingKind.TipsMeeting,
                near.Min(number => _tips[number].Chip),
                -1,
                MiddleOf(near),
                near.Count,
                most,
                double.RadiansToDegrees(near.Min(number => _tips[number].Inside))
            )
        );
    }

    /// <summary>The tips within a distance; null if the cells around have too few.</summary>
    private List<int>? Around(Point at, double distance, ILookup<(long X, long Y), int> cells)
    {
        var (x, y) = CellOf(at, distance);
        var near = new List<int>();
        for (var column = x - 1; column <= x + 1; column++)
        for (var row = y - 1; row <= y + 1; row++)
            near.AddRange(cells[(column, row)]);
        if (near.Count <= job.Limits.MostTips)
            return null;
        near.RemoveAll(number => _tips[number].At.DistanceTo(at) > distance);
        return near;
    }

    private Point MiddleOf(List<int> tips)
    {
        var sum = Vector.Zero;
        foreach (var number in tips)
            sum += _tips[number].At - Point.Origin;
        return Point.Origin + sum / tips.Count;
    }

    private static (long X, long Y) CellOf(Point point, double size) =>
        ((long)Math.Floor(point.X / size), (long)Math.Floor(point.Y / size));
}
