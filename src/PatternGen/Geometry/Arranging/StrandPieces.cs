namespace PatternGen.Geometry;

/// <summary>The pieces of strands between their cuts: the edges of an arrangement, before any that run along each other are made one.</summary>
internal sealed class StrandPieces
{
    private readonly StrandCuts _cuts;
    private readonly Scratch<EdgePiece> _pieces;
    private readonly List<int> _points = [];
    private double[] _keys = [];

    private StrandPieces(StrandCuts cuts, int most)
    {
        _cuts = cuts;
        _pieces = new(most);
    }

    /// <param name="strands">What is cut.</param>
    /// <param name="cuts">The points.</param>
    /// <param name="lists">Which of the points cut.</param>
    internal static Scratch<EdgePiece> Of(Strand[] strands, StrandCuts cuts, CutLists lists)
    {
        var pieces = new StrandPieces(cuts, lists.Count + strands.Length);
        for (var i = 0; i < strands.Length; i++)
            pieces.Add(in strands[i], pieces.InOrder(in strands[i], i, lists));
        return pieces._pieces;
    }

    /// <summary>The points that cut a strand, in order along it; equal ones lie next to each other.</summary>
    private Span<int> InOrder(in Strand strand, int number, CutLists lists)
    {
        _points.Clear();
        lists.CopyTo(_points, number);
        var points = System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_points);
        if (_keys.Length < points.Length)
            _keys = new double[2 * points.Length];
        var keys = _keys.AsSpan(0, points.Length);
        for (var i = 0; i < points.Length; i++)
            keys[i] = strand.KeyOf(_cuts.Points[points[i]]);
        KeySort.Sort(keys, points);
        return points;
    }

    private void Add(in Strand strand, ReadOnlySpan<int> points)
    {
        for (var i = 1; i < points.Length; i++)
            if (points[i - 1] != points[i])
                Add(in strand, _keys[i - 1], _keys[i], points[i - 1], points[i]);
        if (!strand.IsWhole)
            return;
        // Once round: from the last cut to the first, or from the seam to itself.
        var (last, first) =
            points.Length > 0
                ? (points[^1], points[0])
                : (_cuts.SeamOf(strand.Circle), _cuts.SeamOf(strand.Circle));
        AddRound(in strand, last, first);
    }

    private void Add(in Strand strand, double fromKey, double toKey, int from, int to)
    {
        if (strand.IsRound)
            AddRound(in strand, from, to);
        else
        {
            var curve = strand.Part(fromKey, toKey, _cuts.Points[from], _cuts.Points[to]);
            _pieces.Add(new(from, to, curve, strand.Sources));
        }
    }

    private void AddRound(in Strand strand, int from, int to)
    {
        var circle = strand.Circle;
        var (start, end) = (_cuts.Points[from], _cuts.Points[to]);
        var (a, b) = (start - circle.Centre, end - circle.Centre);
        if (from != to && a.Cross(b) >= 0)
        {
            _pieces.Add(new(from, to, MinorArc(circle, start, end), strand.Sources));
            return;
        }
        // More than a half circle: in two parts, its middle opposite to that of the chord. Where the two ends nearly are
        // opposite, their sum cancels, and a quarter turn is as good.
        var aside = from == to ? -a : -(a + b);
        var towards = aside.Length > 1e-3 * circle.Radius ? aside.Unit() : a.Left.Unit();
        var middle = circle.Centre + towards * circle.Radius;
        _pieces.Add(
            new(
                from,
                to,
                MinorArc(circle, start, middle),
                MinorArc(circle, middle, end),
                strand.Sources
            )
        );
    }

    /// <summary>The arc of at most a half circle, counter-clockwise.</summary>
    /// <remarks>
    /// The bulge comes from the angle at the centre: from the chord it would hang on how far off the circle merged points
    /// lie, and by the square root of that for half circles. With x and y the cosine and sine of the angle, each times
    /// l, the vector (l + x, y) points to half of it; the tangent of half of that again is y over its length + l + x.
    /// </remarks>
    private static Segment MinorArc(Circle circle, Point start, Point end)
    {
        var (a, b) = (start - circle.Centre, end - circle.Centre);
        var (x, y) = (a.Dot(b), a.Cross(b));
        // A half circle, but for rounding.
        if (x < 0 && y <= 0)
            return new(start, end, 1);
        var l = Math.Sqrt(x * x + y * y);
        // Beyond a right angle the sum cancels; times (l - x) on both sides it does not.
        var sum = x >= 0 ? l + x : y * y / (l - x);
        return new(start, end, y / (Math.Sqrt(sum * sum + y * y) + sum));
    }
}
