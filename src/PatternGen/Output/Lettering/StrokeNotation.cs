using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Reads the notation in which strokes are written down.</summary>
/// <remarks>
/// Lengths are hundredths of the cap height. The strokes of a character are parted by <c>|</c>. A stroke is a run of
/// points <c>x,y</c> parted by spaces: straight lines lead from one to the next, or a smooth curve where <c>~</c>
/// stands between them. A point may end in the direction in which curves pass it: <c>n e s w</c> (up, right, down,
/// left) or <c>@</c> and degrees counter-clockwise from the right. Without one, a curve carries straight on from what
/// comes before it, and straight into a line after it; where that leaves an end free, the curve is the one arc that
/// fits its other end. A stroke of a single point is a dot.
/// <code>
/// 0,68 0,0 | 0,49 ~ 26,68e ~ 47,46 47,0     n: a stem, then an arch that runs into the second stem
/// </code>
/// </remarks>
internal static class StrokeNotation
{
    /// <summary>Radius of a dot: a small ring, which a pen of the usual width fills at writing sizes.</summary>
    private const double DotRadius = 3;

    internal static IReadOnlyList<Chain> Strokes(string notation)
    {
        var strokes = new List<Chain>();
        foreach (var stroke in notation.Split('|'))
        {
            var knots = KnotsOfStroke(stroke);
            strokes.Add(knots.Count == 1 ? Dot(knots[0].At) : Line(knots));
        }
        return strokes;
    }

    /// <summary>The largest x written.</summary>
    internal static double Width(string notation)
    {
        var width = double.NegativeInfinity;
        foreach (var stroke in notation.Split('|'))
        foreach (var knot in KnotsOfStroke(stroke))
            width = Math.Max(width, knot.At.X);
        return width;
    }

    private static List<Knot> KnotsOfStroke(string stroke)
    {
        var knots = new List<Knot>();
        var curved = false;
        foreach (var word in stroke.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (word != "~")
                knots.Add(Knot.Parse(word, curved));
            curved = word == "~";
        }
        return knots;
    }

    private static Chain Dot(Point centre)
    {
        var (left, right) = (centre.X - DotRadius, centre.X + DotRadius);
        return new(
            new Vertex(left, centre.Y, 1),
            new Vertex(right, centre.Y, 1),
            new Vertex(left, centre.Y)
        );
    }

    private static Chain Line(List<Knot> knots)
    {
        var segments = new List<Segment>();
        for (var i = 1; i < knots.Count; i++)
        {
            var (from, to) = (knots[i - 1], knots[i]);
            var leaving = from.Heading ?? (i > 1 ? Arriving(segments[^1]) : null);
            var arriving =
                to.Heading ?? (i + 1 < knots.Count ? StraightOn(to, knots[i + 1]) : null);
            segments.AddRange(
                to.IsCurved
                    ? SmoothCurve.Between(from.At, leaving, to.At, arriving)
                    : [new(from.At, to.At)]
            );
        }
        return Chain.Of(segments);
    }

    private static Vector Arriving(Segment segment) => segment.TangentAt(segment.Length);

    private static Vector? StraightOn(Knot knot, Knot next) =>
        next.IsCurved ? null : knot.Towards(next);
}
