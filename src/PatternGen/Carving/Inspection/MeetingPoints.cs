using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Checks of the places where corners meet: how many tips, and how sharp the ground between them ends.</summary>
internal sealed class MeetingPoints
{
    /// <summary>Sides that leave in directions nearer than this, in radians, leave in one.</summary>
    private const double OneDirection = 1e-6;

    /// <summary>How far along two sides that leave in one direction it is seen whether they part, in mm.</summary>
    private const double SeenAlong = 1;

    private readonly InspectionJob _job;
    private readonly List<(Point At, Wedge Wedge)> _sides = [];

    internal MeetingPoints(InspectionJob job) => _job = job;

    /// <summary>A side that passes through a corner of another chip, with its chip on the left.</summary>
    internal void AddSide(Point at, Vector along, double curvature, int chip) =>
        _sides.Add((at, new(chip, along, -along, curvature, -curvature)));

    internal void Run()
    {
        var chips = _job.Layout.Chips;
        var count = chips.Sum(chip => _job.Layout.ShapeOf(chip).Corners.Length);
        using var merger = new PointMerger(_job.Merge, count);
        var corners = new List<(int Point, int Chip, int Corner)>(count);
        for (var i = 0; i < chips.Count; i++)
        {
            var chip = chips[i];
            var shape = _job.Layout.ShapeOf(chip);
            for (var k = 0; k < shape.Corners.Length; k++)
                corners.Add((merger.IdOf(chip.Placement.Apply(shape.Corners[k].Point)), i, k));
        }
        var points = merger.Points.ToArray();
        var sides = _sides.ToLookup(side => merger.KnownIdOf(side.At), side => side.Wedge);
        var starts = StartsOf(corners, points.Length);
        var byPoint = new (int Chip, int Corner)[corners.Count];
        var next = starts.ToArray();
        foreach (var (point, chip, corner) in corners)
            byPoint[next[point]++] = (chip, corner);
        for (var point = 0; point < points.Length; point++)
            Look(point, points[point], byPoint.AsSpan(starts[point]..starts[point + 1]), sides);
        new TipCheck(_job, points, starts, byPoint).Run();
    }

    private static int[] StartsOf(List<(int Point, int Chip, int Corner)> corners, int count)
    {
        var starts = new int[count + 1];
        foreach (var (point, _, _) in corners)
            starts[point + 1]++;
        for (var i = 0; i < count; i++)
            starts[i + 1] += starts[i];
        return starts;
    }

    /// <summary>
    /// Looks at the ground round a place. Where three tips or more meet, their number is judged instead: ridges that
    /// come together hold each other up.
    /// </summary>
    private void Look(
        int point,
        Point place,
        ReadOnlySpan<(int Chip, int Corner)> corners,
        ILookup<int, Wedge> sides
    )
    {
        var passes = _sides.Count > 0 && sides.Contains(point);
        if (corners.Length > 2 || (corners.Length == 1 && !passes && !PointsIn(corners[0])))
            return;
        var wedges = new List<Wedge>();
        foreach (var (chip, corner) in corners)
            wedges.Add(WedgeOf(chip, corner));
        if (passes)
            wedges.AddRange(sides[point]);
        wedges.Sort((a, b) => a.From.CompareTo(b.From));
        for (var i = 0; i < wedges.Count; i++)
            Judge(place, wedges[i], wedges[(i + 1) % wedges.Count], corners, wedges.Count == 1);
    }

    /// <summary>Judges the ground from the end of one chip's wedge to the start of the next one's.</summary>
    private void Judge(
        Point place,
        Wedge right,
        Wedge left,
        ReadOnlySpan<(int Chip, int Corner)> corners,
        bool isAlone
    )
    {
        var angle = isAlone
            ? Math.Tau
                - _job.Layout.ShapeOf(_job.Layout.Chips[right.Chip])
                    .Corners[corners[0].Corner]
                    .Inside
            : Turn(right.End, left.Start);
        if (angle < OneDirection || angle > Math.Tau - OneDirection)
        {
            if (!isAlone && !Parts(right, left))
                return;
            angle = 0;
        }
        var limit = _job.Limits.RidgeTipAngle.Degrees;
        var degrees = double.RadiansToDegrees(angle);
        if (degrees >= limit - InspectionJob.Slack)
            return;
        var axis = Transform.Rotate(Angle.FromRadians(angle / 2)).Apply(right.End.Unit());
        var (chip, other) = (Math.Min(right.Chip, left.Chip), Math.Max(right.Chip, left.Chip));
        if (!InspectionJob.IsAcrossGrain(_job.Layout.Chips[chip], axis))
            return;
        _job.Found.Add(
            new(
                FindingKind.ShortGrain,
                chip,
                other == chip ? -1 : other,
                place,
                degrees,
                limit,
                0,
                axis
            )
        );
    }

    private static double Turn(Vector from, Vector to)
    {
        var turn = Math.Atan2(from.Cross(to), from.Dot(to));
        return turn < 0 ? turn + Math.Tau : turn;
    }

    /// <summary>Whether ground opens between two sides that leave in one direction; else they are one side, that both chips share.</summary>
    private bool Parts(Wedge right, Wedge left) =>
        (left.StartCurvature - right.EndCurvature) * SeenAlong * SeenAlong / 2 > _job.Merge;

    private bool PointsIn((int Chip, int Corner) at) =>
        _job.Layout.ShapeOf(_job.Layout.Chips[at.Chip]).Corners[at.Corner].PointsIn;

    private Wedge WedgeOf(int number, int corner)
    {
        var chip = _job.Layout.Chips[number];
        var shape = _job.Layout.ShapeOf(chip);
        var joint = shape.Corners[corner];
        var scale = chip.Placement.Scale;
        var (leaving, arriving) = (
            chip.Placement.Apply(joint.Out),
            chip.Placement.Apply(-joint.In)
        );
        var bend = shape.Sides.Side(corner).Frame.Curvature / scale;
        var back = -shape.Sides.Side(shape.Sides.Before(corner)).Frame.Curvature / scale;
        // Mirrored, the ring is walked the other way, and what bent to the left bends to the right.
        return chip.Placement.IsMirrored
            ? new(number, arriving, leaving, -back, -bend)
            : new(number, leaving, arriving, bend, back);
    }

    /// <summary>What a chip takes of the directions round a corner, counter-clockwise from one side to the other.</summary>
    /// <param name="Chip">Number of the chip.</param>
    /// <param name="Start">Where it starts.</param>
    /// <param name="End">Where it ends.</param>
    /// <param name="StartCurvature">How the side at the start bends to the left on its way out.</param>
    /// <param name="EndCurvature">How the side at the end bends to the left on its way out.</param>
    private readonly record struct Wedge(
        int Chip,
        Vector Start,
        Vector End,
        double StartCurvature,
        double EndCurvature
    )
    {
        internal double From => Math.Atan2(Start.Y, Start.X);
    }
}
