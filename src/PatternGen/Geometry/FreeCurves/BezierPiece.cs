namespace PatternGen.Geometry;

/// <summary>A Bézier curve of any degree, with weights where it is rational.</summary>
internal sealed class BezierPiece : CurvePiece
{
    /// <summary>Control points this near to the line through both ends, as a share of its length, lie on it.</summary>
    private const double Straight = 1e-14;

    private readonly Point[] _controls;
    private readonly double[]? _weights;

    internal BezierPiece(Point[] controls, double[]? weights = null)
    {
        (_controls, _weights) = (controls, weights);
        IsStraight = OnALine(controls);
    }

    internal override bool IsStraight { get; }

    /// <summary>De Casteljau's algorithm, with the weights carried along; the last step but one gives the derivative.</summary>
    internal override CurvePlace At(double t)
    {
        var degree = _controls.Length - 1;
        Span<Point> points = stackalloc Point[_controls.Length];
        Span<double> weights = stackalloc double[_controls.Length];
        _controls.CopyTo(points);
        if (_weights is null)
            weights.Fill(1);
        else
            _weights.CopyTo(weights);
        for (var left = degree; left > 1; left--)
        for (var i = 0; i < left; i++)
            (points[i], weights[i]) = Between(points, weights, i, t);
        var (point, weight) = Between(points, weights, 0, t);
        var along =
            degree * (weights[0] * weights[1] / (weight * weight)) * (points[1] - points[0]);
        // Rounding must not part a curve from its own end.
        return new(t == 1 ? _controls[^1] : point, along);
    }

    private static (Point, double) Between(
        ReadOnlySpan<Point> points,
        ReadOnlySpan<double> weights,
        int i,
        double t
    )
    {
        var weight = weights[i] + (weights[i + 1] - weights[i]) * t;
        return (points[i].Towards(points[i + 1], t * (weights[i + 1] / weight)), weight);
    }

    /// <summary>Whether the control points lie on the line from first to last, each at or after the one before.</summary>
    private static bool OnALine(Point[] controls)
    {
        var chord = controls[^1] - controls[0];
        double reached = 0;
        foreach (var control in controls)
        {
            var to = control - controls[0];
            var along = to.Dot(chord);
            if (Math.Abs(to.Cross(chord)) > Straight * chord.LengthSquared || along < reached)
                return false;
            reached = along;
        }
        return chord.LengthSquared > 0;
    }
}
