namespace PatternGen.Geometry;

public sealed partial class Grid : ISnapGrid
{
    double ISnapGrid.LineCount(Extents room)
    {
        var (low, high) = Reach(room);
        return (high.X - low.X) / StepX + (high.Y - low.Y) / StepY;
    }

    string ISnapGrid.Coarser(Extents room, int most) =>
        $"steps {Guard.Text(Math.Ceiling(((ISnapGrid)this).LineCount(room) / most * 10) / 10)} times as long";

    IEnumerable<SegmentRun> ISnapGrid.Lines(Extents room)
    {
        var (low, high) = Reach(room);
        foreach (var x in Steps(low.X, high.X, StepX))
            yield return Chain.Line(Place(new(x, low.Y)), Place(new(x, high.Y)));
        foreach (var y in Steps(low.Y, high.Y, StepY))
            yield return Chain.Line(Place(new(low.X, y)), Place(new(high.X, y)));
    }

    /// <summary>The smallest rectangle along the grid that holds another, from the grid's origin.</summary>
    private (Vector Low, Vector High) Reach(Extents room)
    {
        var middle = Along(room.Min.Towards(room.Max, 0.5) - Origin);
        var halfX = (room.Width * Math.Abs(_cos) + room.Height * Math.Abs(_sin)) / 2;
        var halfY = (room.Width * Math.Abs(_sin) + room.Height * Math.Abs(_cos)) / 2;
        Vector half = new(halfX, halfY);
        return (middle - half, middle + half);
    }

    /// <summary>A line at the very edge of the room is one of its lines, whichever way it rounds.</summary>
    private static IEnumerable<double> Steps(double low, double high, double step)
    {
        var rounding = Tolerance.ForExtent(high - low).Merge / step;
        var last = Math.Floor(high / step + rounding);
        for (var k = Math.Ceiling(low / step - rounding); k <= last; k++)
            yield return k * step;
    }

    private Vector Along(Vector offset) =>
        new(offset.X * _cos + offset.Y * _sin, offset.Y * _cos - offset.X * _sin);

    private Point Place(Vector along) =>
        new(
            Origin.X + (along.X * _cos - along.Y * _sin),
            Origin.Y + (along.X * _sin + along.Y * _cos)
        );
}
