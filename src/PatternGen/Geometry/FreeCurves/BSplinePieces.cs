namespace PatternGen.Geometry;

/// <summary>A B-spline, rational or not, as the Bézier curves that it consists of.</summary>
internal static class BSplinePieces
{
    /// <summary>Returns one Bézier curve for each span of knots that has a length.</summary>
    internal static CurvePiece[] Of(int degree, double[] knots, Point[] controls, double[]? weights)
    {
        var pieces = new List<CurvePiece>();
        for (var span = degree; span < controls.Length; span++)
            if (knots[span] < knots[span + 1])
                pieces.Add(Piece(degree, knots, controls, weights, span));
        return [.. pieces];
    }

    /// <summary>Control point j of the piece from a to b is the blossom at (degree - j) times a and j times b.</summary>
    private static BezierPiece Piece(
        int degree,
        double[] knots,
        Point[] controls,
        double[]? weights,
        int span
    )
    {
        var points = new Point[degree + 1];
        var own = new double[degree + 1];
        for (var j = 0; j <= degree; j++)
            (points[j], own[j]) = Blossom(degree, knots, controls, weights, span, j);
        return new(points, weights is null ? null : own);
    }

    /// <summary>De Boor's algorithm with another argument at each step.</summary>
    private static (Point, double) Blossom(
        int degree,
        double[] knots,
        Point[] controls,
        double[]? weights,
        int span,
        int ends
    )
    {
        var first = span - degree;
        var points = controls[first..(span + 1)];
        var heavy = weights is null
            ? Enumerable.Repeat(1.0, degree + 1).ToArray()
            : weights[first..(span + 1)];
        for (var step = 1; step <= degree; step++)
        {
            var at = knots[step <= ends ? span + 1 : span];
            for (var i = degree; i >= step; i--)
            {
                var low = knots[first + i];
                var share = (at - low) / (knots[first + i + degree + 1 - step] - low);
                var weight = heavy[i - 1] + (heavy[i] - heavy[i - 1]) * share;
                points[i] = points[i - 1].Towards(points[i], share * (heavy[i] / weight));
                heavy[i] = weight;
            }
        }
        return (points[degree], heavy[degree]);
    }
}
