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
    private readonly List<List<Side>> _onLines = [];
    private readonly List<List<Side>> _onCircles = [];

    private SideOverlaps(IReadOnlyList<Point> points) => _points = points;

    internal static IReadOnlyList<Side> Cut(IReadOnlyList<Point> points, IReadOnlyList<Side> sides)
    {
        var overlaps = new SideOverlaps(points);
        foreach (var side in sides)
            overlaps.GroupOf(side).Add(side);
        var pieces = new List<Side>(sides.Count);
        foreach (var group in overlaps._onLines)
            pieces.AddRange(group.Count == 1 ? group : overlaps.CutLine(group));
        foreach (var group in overlaps._onCircles)
            pieces.AddRange(group.Count == 1 ? group : overlaps.CutCircle(group));
        return pieces;
    }

    private List<Side> GroupOf(Side side)
    {
        var (groups, (number, isNew)) =
            side.Bulge == 0 ? (_onLines, FindLine(side)) : (_onCircles, FindCircle(side));
        if (isNew)
            groups.Add([]);
        return groups[number];
    }

    private (int Number, bool IsNew) FindLine(Side side)
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
        return _lines.Find(direction / DirectionCell, place / PlaceCell);
    }

    private (int Number, bool IsNew) FindCircle(Side side)
    {
        var arc = SegmentOf(side);
        var centre = arc.Centre - _points[0];
        return _circles.Find(centre.X / CircleCell, centre.Y / CircleCell, arc.Radius / CircleCell);
    }

    private IReadOnlyList<Side> CutLine(List<Side> sides)
    {
        var start = _points[sides[0].From];
        var along = (_points[sides[0].To] - start).Unit();
        var cover = new Cover(sides, point => along.Dot(_points[point] - start));
        foreach (var side in sides)
            cover.Add(side, isForward: cover.RankOf(side.From) < cover.RankOf(side.To));
        return cover.Pieces((from, to) => 0);
    }

    private IReadOnlyList<Side> CutCircle(List<Side> sides)
    {
        var centre = SegmentOf(sides[0]).Centre;
        double TurnOf(int point) => (_points[point] - centre).Direction.Radians;
        var cover = new Cover(sides, TurnOf);
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

    /// <summary>How often each stretch of one line or circle is drawn, between the points on it in their order.</summary>
    private sealed class Cover
    {
        private readonly List<Side> _sides;
        private readonly int[] _points;
        private readonly Dictionary<int, int> _ranks;

        /// <summary>At each point, how much more often the stretch after it is drawn than the one before.</summary>
        private readonly int[] _steps;

        /// <summary>How often the stretch from the last point round to the first is drawn.</summary>
        private int _wraps;

        internal Cover(List<Side> sides, Func<int, double> place)
        {
            _sides = sides;
            _points =
            [
                .. sides
                    .SelectMany(side => new[] { side.From, side.To })
                    .Distinct()
                    .OrderBy(place)
                    .ThenBy(point => point),
            ];
            _ranks = _points.Select((point, rank) => (point, rank)).ToDictionary();
            _steps = new int[_points.Length];
        }

        internal int RankOf(int point) => _ranks[point];

        internal void Add(Side side, bool isForward)
        {
            var (first, last) = (RankOf(side.From), RankOf(side.To));
            if (!isForward)
                (first, last) = (last, first);
            _steps[first] += side.Times;
            _steps[last] -= side.Times;
            if (last < first)
                _wraps += side.Times;
        }

        /// <summary>Returns the stretches that are drawn; the sides themselves if none of them is cut.</summary>
        internal IReadOnlyList<Side> Pieces(Func<int, int, double> bulge)
        {
            var pieces = new List<Side>();
            var times = _wraps;
            for (var rank = 0; rank < _points.Length; rank++)
            {
                times += _steps[rank];
                if (times == 0)
                    continue;
                var (from, to) = (_points[rank], _points[(rank + 1) % _points.Length]);
                pieces.Add(new(from, to, bulge(from, to), times));
            }
            var isCut = pieces.Sum(piece => piece.Times) > _sides.Sum(side => side.Times);
            return isCut ? pieces : _sides;
        }
    }
}
