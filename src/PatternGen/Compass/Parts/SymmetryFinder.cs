using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds the symmetry of a figure and where it takes the faces.</summary>
/// <remarks>
/// Every symmetry leaves the centre of gravity of the lines where it is. A turn of order n moves all other points in rounds
/// of n, so n divides the number of run ends and middles at each distance from the centre, and only those orders are tried.
/// A mirror is known from where it takes one point; modulo turns, only a few places are left to try.
/// </remarks>
internal sealed class SymmetryFinder
{
    private readonly FigureRun[] _runs;
    private readonly Point _centre;
    private readonly double _near;
    private readonly int _faces;
    private readonly RunPlaces _places;

    private SymmetryFinder(FigureRun[] runs, Point centre, double near, int faces)
    {
        (_runs, _centre, _near, _faces) = (runs, centre, near, faces);
        _places = new(runs, near);
    }

    /// <summary>The symmetry, and where it takes the bounded faces: face 1 is the first.</summary>
    internal static (FigureSymmetry Symmetry, FigureGroup Group) Of(
        Arrangement arrangement,
        double near
    )
    {
        var centre = CentreOf(arrangement);
        var runs = FigureRuns.Of(arrangement, near);
        return new SymmetryFinder(runs, centre, near, arrangement.Faces.Count).Find();
    }

    private (FigureSymmetry, FigureGroup) Find()
    {
        var rounds = RoundsOf(_runs.SelectMany(PointsOf));
        var unmoved = Enumerable.Range(0, _faces - 1).ToArray();
        if (rounds.Count == 0)
            return (new(_centre, 1, Angle.Zero, isRound: true), new(1, unmoved, unmoved));
        var (order, turn) = LargestTurn(rounds) ?? (1, unmoved);
        var mirror = FirstMirror(rounds.MinBy(round => round.Count)!, order);
        return (
            new(_centre, order, mirror?.Direction, isRound: false),
            new(order, turn, mirror?.Faces)
        );
    }

    private (int Order, int[] Turn)? LargestTurn(List<List<Point>> rounds)
    {
        var most = rounds.Aggregate(0, (common, round) => CommonDivisor.Of(common, round.Count));
        for (var order = most; order > 1; order--)
            if (
                most % order == 0
                && FacesAfter(Transform.Rotate(Angle.OfTurn(1.0 / order), _centre)) is { } turn
            )
                return (order, turn);
        return null;
    }

    private (Angle Direction, int[] Faces)? FirstMirror(List<Point> round, int order)
    {
        var from = (round[0] - _centre).Direction;
        // Half a step more on both sides, so that rounding leaves no place out.
        var step = Math.Tau / order;
        foreach (var point in round)
        {
            var ahead = ((point - _centre).Direction - from).Normalized().Radians;
            if (ahead > step * 1.5)
                continue;
            var direction = WithinStep(from.Radians + ahead / 2, step / 2);
            if (FacesAfter(Transform.Mirror(_centre, direction)) is { } faces)
                return (direction, faces);
        }
        return null;
    }

    /// <summary>The mirror line next to level; a hair above or below it, a hundredth of what is near, it is level.</summary>
    private Angle WithinStep(double direction, double step)
    {
        var rest = direction - step * Math.Floor(direction / step);
        var reach = _runs.SelectMany(PointsOf).Max(point => point.DistanceTo(_centre));
        return Math.Min(rest, step - rest) * reach < _near / 100
            ? Angle.Zero
            : Angle.FromRadians(rest);
    }

    /// <summary>Where a symmetry takes each bounded face; null if it is none.</summary>
    private int[]? FacesAfter(Transform taken)
    {
        var faces = new int[_faces];
        Array.Fill(faces, -1);
        faces[0] = 0;
        var isTaken = new bool[_runs.Length];
        foreach (var run in _runs)
        {
            if (_places.Find(run, taken) is not { } found || isTaken[found.Run])
                return null;
            isTaken[found.Run] = true;
            var target = _runs[found.Run];
            // A mirror swaps left and right, and so does running the other way.
            var (left, right) =
                found.Reversed != taken.IsMirrored
                    ? (target.RightFace, target.LeftFace)
                    : (target.LeftFace, target.RightFace);
            if (!Put(run.LeftFace, left) || !Put(run.RightFace, right))
                return null;
        }
        return [.. faces.Skip(1).Select(face => face - 1)];

        bool Put(int from, int to)
        {
            if (faces[from] < 0)
                faces[from] = to;
            return faces[from] == to;
        }
    }

    /// <summary>What a symmetry takes to something of the same kind; a whole circle is known by its centre.</summary>
    private static IEnumerable<Point> PointsOf(FigureRun run) =>
        run.Circle is null ? [run.Start, run.Middle, run.End] : [run.Middle];

    /// <summary>The points other than the centre, those at one distance from it together.</summary>
    private List<List<Point>> RoundsOf(IEnumerable<Point> points)
    {
        var rounds = new List<List<Point>>();
        var last = _near;
        foreach (var point in points.OrderBy(point => point.DistanceTo(_centre)))
        {
            var distance = point.DistanceTo(_centre);
            if (distance <= _near)
                continue;
            if (rounds.Count == 0 || distance - last > _near)
                rounds.Add([]);
            rounds[^1].Add(point);
            last = distance;
        }
        return rounds;
    }

    private static Point CentreOf(Arrangement arrangement)
    {
        double length = 0;
        var moment = Vector.Zero;
        foreach (var segment in arrangement.Edges.SelectMany(edge => edge.Forward.Segments))
        {
            length += segment.Length;
            moment += (CentreOf(segment) - Point.Origin) * segment.Length;
        }
        return Point.Origin + moment / length;
    }

    /// <summary>Centre of gravity of a line or arc: of an arc with half the sweep h, at R sin(h) / h from its centre.</summary>
    private static Point CentreOf(Segment segment)
    {
        if (segment.IsLine)
            return segment.Middle;
        var half = segment.Sweep.Radians / 2;
        // Measured from the middle of the arc, which keeps its digits where the centre is far away.
        var inwards = segment.Chord.Left * Math.Sign(segment.Bulge);
        return segment.Middle + inwards.Unit() * (segment.Radius * (1 - Math.Sin(half) / half));
    }
}
