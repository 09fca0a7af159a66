namespace PatternGen.Tests.Geometry;

/// <summary>
/// Cubic splines the other way: by their second derivatives M at the points,
/// h(i-1) M(i-1) + 2 (h(i-1) + h(i)) M(i) + h(i) M(i+1) = 6 (slope(i) - slope(i-1)), solved by plain elimination.
/// </summary>
internal static class SecondDerivatives
{
    /// <summary>The natural spline; the parameter runs over each span by 1.</summary>
    internal static Func<double, Point> Natural(Point[] points)
    {
        var last = points.Length - 1;
        return Spline(points, closed: false, i => i > 0 && i < last);
    }

    /// <summary>The periodic spline.</summary>
    internal static Func<double, Point> Periodic(Point[] points) =>
        Spline([.. points, points[0]], closed: true, _ => true);

    private static Func<double, Point> Spline(Point[] points, bool closed, Func<int, bool> bends)
    {
        var spans = points.Length - 1;
        var count = closed ? spans : points.Length;
        var h = Enumerable
            .Range(0, spans)
            .Select(i => points[i].DistanceTo(points[i + 1]))
            .ToArray();
        var x = Coordinate(point => point.X);
        var y = Coordinate(point => point.Y);
        return at =>
        {
            var span = Math.Min((int)at, spans - 1);
            return new(x(span, at - span), y(span, at - span));
        };

        Func<int, double, double> Coordinate(Func<Point, double> of)
        {
            var f = points.Select(of).ToArray();
            var rows = new double[count][];
            for (var i = 0; i < count; i++)
            {
                rows[i] = new double[count + 1];
                if (!bends(i))
                {
                    rows[i][i] = 1;
                    continue;
                }
                var before = (i + spans - 1) % spans;
                rows[i][before] += h[before];
                rows[i][i] += 2 * (h[before] + h[i]);
                rows[i][(i + 1) % count] += h[i];
                rows[i][count] =
                    6 * ((f[i + 1] - f[i]) / h[i] - (f[before + 1] - f[before]) / h[before]);
            }
            var m = Eliminate(rows);
            return (i, t) =>
            {
                var (a, b) = (1 - t, t);
                var (low, high) = (m[i], m[(i + 1) % count]);
                return a * f[i]
                    + b * f[i + 1]
                    + ((a * a * a - a) * low + (b * b * b - b) * high) * h[i] * h[i] / 6;
            };
        }
    }

    private static double[] Eliminate(double[][] rows)
    {
        var count = rows.Length;
        for (var i = 0; i < count; i++)
        for (var below = 0; below < count; below++)
        {
            if (below == i || rows[below][i] == 0)
                continue;
            var factor = rows[below][i] / rows[i][i];
            for (var j = i; j <= count; j++)
                rows[below][j] -= factor * rows[i][j];
        }
        return [.. rows.Select((row, i) => row[count] / row[i])];
    }
}
