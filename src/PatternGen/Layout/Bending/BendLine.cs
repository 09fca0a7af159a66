using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The line that a band is bent along: stretches of even curvature that go on smoothly.</summary>
/// <remarks>
/// <see cref="Map"/> is the one expression for where a place lies, so that whatever meets at a place agrees to the last
/// digit. Round a closed line, places a whole length apart are the same place.
/// </remarks>
internal sealed class BendLine
{
    /// <summary>Share of the length within which a place is at the joint of two stretches.</summary>
    private const double AtJoint = 1e-12;

    private readonly BendPiece[] _pieces;

    /// <param name="pieces">In order, each beginning where the one before ends.</param>
    /// <param name="isClosed">Whether the last one ends where the first begins.</param>
    internal BendLine(BendPiece[] pieces, bool isClosed)
    {
        _pieces = pieces;
        IsClosed = isClosed;
        Length = pieces[^1].End - pieces[0].Start;
    }

    internal IReadOnlyList<BendPiece> Pieces => _pieces;

    internal bool IsClosed { get; }

    /// <summary>Length in mm, on the line where lengths are measured.</summary>
    internal double Length { get; }

    /// <summary>Where a place lies; beyond the ends of an open line it goes on as it ends. What is meant for a joint lies on it.</summary>
    internal Point Map(double x, double y)
    {
        x = Wrapped(x);
        var index = IndexAt(x);
        var near = AtJoint * Length;
        var next = index + 1 < _pieces.Length ? index + 1 : 0;
        if (_pieces[index].End - x <= near && (IsClosed || next > 0))
            return _pieces[next].Map(_pieces[next].Start, y);
        var piece = _pieces[index];
        return piece.Map(Math.Abs(x - piece.Start) <= near ? piece.Start : x, y);
    }

    /// <summary>Where a place on the lowest rule lies, and how the band is turned there.</summary>
    internal Transform Frame(double x)
    {
        x = Wrapped(x);
        return PieceAt(x).Frame(x);
    }

    /// <summary>The stretch that holds everything from one x to another; null if they lie on several.</summary>
    internal BendPiece? PieceOver(double from, double to) =>
        Joints(from, to).Any() ? null : PieceAt(Wrapped((from + to) / 2));

    /// <summary>The same place as the stretches count it.</summary>
    internal double Wrapped(double x)
    {
        if (!IsClosed)
            return x;
        var start = _pieces[0].Start;
        var round = Math.Floor((x - start) / Length);
        return round == 0 ? x : x - round * Length;
    }

    /// <summary>Every x strictly between two where one stretch ends and another begins, in order.</summary>
    internal IEnumerable<double> Joints(double from, double to)
    {
        if (_pieces.Length == 1)
            yield break;
        var near = AtJoint * Length;
        var round = IsClosed ? Math.Floor((from - _pieces[0].Start) / Length) - 1 : 0;
        var last = IsClosed ? Math.Floor((to - _pieces[0].Start) / Length) : 0;
        for (; round <= last; round++)
            foreach (var piece in IsClosed ? _pieces : _pieces.Skip(1))
            {
                var joint = piece.Start + round * Length;
                if (joint > from + near && joint < to - near)
                    yield return joint;
            }
    }

    /// <summary>The parallel of the path at a height, from one x to another; once round a closed line it ends where it began.</summary>
    internal Chain Along(double from, double to, double y)
    {
        double[] stops = [from, .. Joints(from, to), to];
        var corners = new List<Vertex>();
        for (var i = 1; i < stops.Length; i++)
        {
            var turn = PieceAt(Wrapped((stops[i - 1] + stops[i]) / 2)).Turn;
            foreach (var part in BentArc.Parts(stops[i - 1], stops[i], turn))
                corners.Add(new(Map(part.X, y), part.Bulge));
        }
        var isRound = IsClosed && Math.Abs(to - from - Length) <= AtJoint * Length;
        corners.Add(new(isRound ? corners[0].Point : Map(to, y)));
        return new(corners);
    }

    /// <summary>The straight line across the band at an x.</summary>
    internal Chain Across(double x, double from, double to) => Chain.Line(Map(x, from), Map(x, to));

    /// <summary>The stretch that holds an x, as the stretches count it; at a joint the one that begins there.</summary>
    internal BendPiece PieceAt(double x) => _pieces[IndexAt(x)];

    private int IndexAt(double x)
    {
        var (first, last) = (0, _pieces.Length - 1);
        while (first < last)
        {
            var middle = (first + last + 1) / 2;
            if (_pieces[middle].Start <= x)
                first = middle;
            else
                last = middle - 1;
        }
        return first;
    }
}
