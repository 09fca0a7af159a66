namespace PatternGen.Geometry;

/// <summary>The cubic spline through points: the curve of continuous curvature that is a cubic between each two of them.</summary>
/// <remarks>
/// The parameter runs by the chords, h = |p(i+1) - p(i)|, so that unevenly spaced points make no loops. With the derivative m
/// at each point, the second derivatives agree where
/// h(i) m(i-1) + 2 (h(i-1) + h(i)) m(i) + h(i-1) m(i+1) = 3 (h(i) s(i-1) + h(i-1) s(i)), s the slopes of the chords
/// (de Boor, A Practical Guide to Splines, chapter IV).
/// </remarks>
internal static class SplineThrough
{
    /// <summary>An open one; at an end without a tangent it does not bend.</summary>
    internal static CurvePiece[] Open(Point[] points, Vector? leaving, Vector? arriving)
    {
        var last = points.Length - 1;
        var (steps, slopes) = Chords(points, last);
        var rows = new Row[points.Length];
        rows[0] = leaving is { } first ? new(0, 1, 0, first) : new(0, 2, 1, 3 * slopes[0]);
        for (var i = 1; i < last; i++)
            rows[i] = Inner(steps[i - 1], steps[i], slopes[i - 1], slopes[i]);
        rows[last] = arriving is { } end ? new(0, 1, 0, end) : new(1, 2, 0, 3 * slopes[last - 1]);
        return Pieces(points, steps, Solved(rows));
    }

    /// <summary>A closed one, back to the first point.</summary>
    /// <remarks>
    /// The corners of the cyclic system are taken out as a product of two vectors (Sherman and Morrison), which leaves two
    /// open systems.
    /// </remarks>
    internal static CurvePiece[] Closed(Point[] points)
    {
        var count = points.Length;
        var (steps, slopes) = Chords(points, count);
        var rows = new Row[count];
        for (var i = 0; i < count; i++)
        {
            var before = (i + count - 1) % count;
            rows[i] = Inner(steps[before], steps[i], slopes[before], slopes[i]);
        }
        var (topRight, bottomLeft) = (rows[0].Below, rows[^1].Above);
        var shift = -rows[0].Middle;
        var bordered = (Row[])rows.Clone();
        bordered[0] = rows[0] with { Middle = rows[0].Middle - shift };
        bordered[^1] = rows[^1] with { Middle = rows[^1].Middle - topRight * bottomLeft / shift };
        var plain = Solved(bordered);
        var border = new Row[count];
        for (var i = 0; i < count; i++)
            border[i] = bordered[i] with { Right = default };
        // Both parts of the vector are the same, as one component carries all.
        border[0] = border[0] with
        {
            Right = new(shift, 0),
        };
        border[^1] = border[^1] with { Right = new(bottomLeft, 0) };
        var correction = Solved(border);
        var share =
            (plain[0] + plain[^1] * (topRight / shift))
            / (1 + correction[0].X + correction[^1].X * (topRight / shift));
        var derivatives = plain.Select((m, i) => m - share * correction[i].X).ToArray();
        return Pieces([.. points, points[0]], steps, [.. derivatives, derivatives[0]]);
    }

    private static Row Inner(double before, double after, Vector arriving, Vector leaving) =>
        new(after, 2 * (before + after), before, 3 * (after * arriving + before * leaving));

    private static (double[] Steps, Vector[] Slopes) Chords(Point[] points, int count)
    {
        var steps = new double[count];
        var slopes = new Vector[count];
        for (var i = 0; i < count; i++)
        {
            var chord = points[(i + 1) % points.Length] - points[i];
            steps[i] = chord.Length;
            slopes[i] = chord / steps[i];
        }
        return (steps, slopes);
    }

    private static CurvePiece[] Pieces(Point[] points, double[] steps, Vector[] derivatives)
    {
        var pieces = new CurvePiece[steps.Length];
        for (var i = 0; i < pieces.Length; i++)
            pieces[i] = new BezierPiece([
                points[i],
                points[i] + derivatives[i] * (steps[i] / 3),
                points[i + 1] - derivatives[i + 1] * (steps[i] / 3),
                points[i + 1],
            ]);
        return pieces;
    }

    /// <summary>Solves a system of three diagonals from top to bottom and back; the middle one outweighs the others, so no row is swapped.</summary>
    private static Vector[] Solved(Row[] rows)
    {
        var reduced = (Row[])rows.Clone();
        for (var i = 1; i < rows.Length; i++)
        {
            var factor = rows[i].Below / reduced[i - 1].Middle;
            reduced[i] = rows[i] with
            {
                Middle = rows[i].Middle - factor * reduced[i - 1].Above,
                Right = rows[i].Right - factor * reduced[i - 1].Right,
            };
        }
        var solved = new Vector[rows.Length];
        for (var i = rows.Length - 1; i >= 0; i--)
        {
            var known = i + 1 < rows.Length ? reduced[i].Above * solved[i + 1] : default;
            solved[i] = (reduced[i].Right - known) / reduced[i].Middle;
        }
        return solved;
    }

    /// <summary>One equation: below, on and above the diagonal, and the right-hand side.</summary>
    private readonly record struct Row(double Below, double Middle, double Above, Vector Right);
}
