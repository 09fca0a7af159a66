using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds sides that lie on one line or circle and cuts them where others on it begin and end.</summary>
/// <remarks>
/// Sides are grouped by the line or circle they lie on, and within a group sorted along it, so that the work grows
/// hardly faster than the number of sides. Arcs so flat that their centre is lost in rounding are only recognised
/// when their ends agree, which is found before.
/// </remarks>
internal sealed class SideOverlaps
{
    /// <summary>Lines this near in direction (radians) and place (mm) are one line; several times what arithmetic
    /// loses on sides of a millimetre, and far below what a tool can show.</summary>
    private const double DirectionCell = 1e-6;
    private const double PlaceCell = 4e-6;

    /// <summary>Directions are taken from just below 0 to just below 180°, since level lines are common.</summary>
    private const double FirstDirection = -1e-5;

    /// <summary>Circles whose centres and radii agree to this many mm are one circle.</summary>
    private const double CircleCell = 1e-5;

    private const double Border = 0.25;

    private readonly IReadOnlyList<Point> _points;
    private readonly CellIndex _lines = new(Border);
    private readonly CellIndex _circles = new(Border);

    private SideOverlaps(IReadOnlyList<Point> points) => _points = points;

    /// <summary>Returns the pieces, those of the first line first.</summary>
    internal static IReadOnlyList<Side> Cut(IReadOnlyList<Point> points, IReadOnlyList<Side> sides)
    {
        var overlaps = new SideOverlaps(points);
        var lines = sides.Where(side => side.Bulge == 0).ToArray();
        var arcs = sides.Where(side => side.Bulge != 0).ToArray();
        var pieces = new List<Side>(sides.Count);
        overlaps.Cut(lines, overlaps._lines, overlaps.LineOf, overlaps.CutLine, pieces);
        overlaps.Cut(arcs, overlaps._circles, overlaps.CircleOf, overlaps.CutCircle, pieces);
        return pieces;
    }

    private void Cut(
        Side[] sides,
        CellIndex carriers,
        Func<Side, int> carrierOf,
        Func<Side[], IReadOnlyList<Side>> cut,
        List<Side> pieces
    )
    {
        var groups = new Buckets(Array.ConvertAll(sides, side => carrierOf(side)), carriers.Count);
        for (var group = 0; group < groups.Count; group++)
        {
            var items = groups[group];
            if (items.Length == 1)
                pieces.Add(sides[items[0]]);
            else
                pieces.AddRange(cut(Array.ConvertAll(items.ToArray(), item => sides[item])));
        }
    }

    private int LineOf(Side side)
    {
        var along = (_points[side.To] - _points[side.From]).Unit();
        var direction = Math.Atan2(along.Y, along.X);
        if (direction < FirstDirection)
            (direction, along) = (direction + Math.PI, -along);
        if (direction >= Math.PI + FirstDirection)
            (direction, along) = (direction - Math.PI, -along);
        // Measured from a point of the drawing: far from the origin an error in direction would weigh more.
        var middle = _points[side.From].Towards(_points[side.To], 0.5);
        var place = along.Cross(middle - _points[0]);
        return _lines.Find(direction / DirectionCell, place / PlaceCell).Number;
    }

    private int CircleOf(Side side)
    {
        var arc = SegmentOf(side);
        var centre = arc.Centre - _points[0];
        return _circles
            .Find(centre.X / CircleCell, centre.Y / CircleCell, arc.Radius / CircleCell)
            .Number;
    }

    private IReadOnlyList<Side> CutLine(Side[] sides)
    {
        var start = _points[sides[0].From];
        var along = (_points[sides[0].To] - start).Unit();
        var cover = new SideCover(sides, point => along.Dot(_points[point] - start));
        foreach (var side in sides)
            cover.Add(side, isForward: cover.RankOf(side.From) < cover.RankOf(side.To));
        return cover.Pieces((from, to) => 0);
    }

    private IReadOnlyList<Side> CutCircle(Side[] sides)
    {
        var centre = SegmentOf(sides[0]).Centre;
        double TurnOf(int point) => (_points[point] - centre).Direction.Radians;
        var cover = new SideCover(sides, TurnOf);
        foreach (var side in sides)
            cover.Add(side, isForward: side.Bulge > 0);
        return cover.Pieces(
            (from, to) =>
            {
                var turn = TurnOf(to) - TurnOf(from);
                return Math.Tan((turn > 0 ? turn : turn + Math.Tau) / 4);
            }
        );
    }

    private Segment SegmentOf(Side side) => new(_points[side.From], _points[side.To], side.Bulge);
}
