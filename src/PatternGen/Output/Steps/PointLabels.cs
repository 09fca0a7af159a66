using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// Finds room for the letters and numbers beside points, away from the middle of the figure: none over another or over a
/// point, and off the new lines where there is room.
/// </summary>
internal sealed class PointLabels(
    Extents frame,
    Point centre,
    IReadOnlyList<Point> points,
    IReadOnlyList<Segment> lines
)
{
    private const double Height = 2.1;

    /// <summary>From a point to the middle of its label, in mm.</summary>
    private const double Away = 2.6;

    /// <summary>Half the size of the cross at a point, in mm.</summary>
    private const double Mark = 0.8;

    /// <summary>Crosses of neighbours stay apart: half a cross is this share of their distance at most.</summary>
    private const double ShareOfDistance = 0.35;

    /// <summary>Where else a label may stand, in degrees from its first choice.</summary>
    private static readonly double[] Turns = [0, 35, -35, 70, -70, 110, -110, 150, -150];

    private readonly List<Extents> _taken = [];

    /// <summary>Half the size in mm of the cross at a point: smaller where points stand close.</summary>
    internal double MarkAt(Point point) => Math.Min(Mark, ShareOfDistance * Nearest(point));

    /// <summary>The label where there is room for it; null if there is none, as in a round of many points.</summary>
    internal Label? Place(string text, Point point)
    {
        // Beside points that stand close, a label elsewhere than straight outwards would not tell which is meant.
        Label[] free =
        [
            .. (Nearest(point) < Height ? Turns[..1] : Turns)
                .Select(turn => At(text, point, turn))
                .Where(label => IsFree(RoomOf(label))),
        ];
        if (free.Length == 0)
            return null;
        var best = Array.FindIndex(free, label => IsOffLines(RoomOf(label)));
        var placed = free[Math.Max(0, best)];
        _taken.Add(RoomOf(placed));
        return placed;
    }

    private Label At(string text, Point point, double turn)
    {
        var outward = point - centre;
        var first = outward.Length > Away ? outward.Unit() : new Vector(0.6, -0.8);
        var width = Lettering.Width(text, Height);
        var middle = point + Transform.Rotate(turn).Apply(first) * (Away + width / 4);
        return new(text, middle - new Vector(width / 2, Height / 2), Height);
    }

    private static Extents RoomOf(Label label) =>
        new(label.At, label.At + new Vector(Lettering.Width(label.Text, Height), Height));

    private bool IsFree(Extents room) =>
        frame.Contains(room) && !_taken.Exists(room.Touches) && !points.Any(room.Contains);

    private bool IsOffLines(Extents room) =>
        !lines.Any(line => line.Extents.Touches(room) && FrameClip.Inside(line, room).Any());

    private double Nearest(Point point) =>
        points
            .Select(point.DistanceTo)
            .Where(distance => distance > 0)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
}
