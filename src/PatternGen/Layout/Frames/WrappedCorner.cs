using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The corner piece of a band's own: the rules go on to the mitre and come across from the other side, and each cell
/// between carved strips is halved by a diagonal into two chips that share it as a ridge.
/// </summary>
/// <remarks>
/// On the mitre the diagonals lie along it. Their direction changes from cell to cell, so that those of four cells round
/// one point meet there, and the two rows of a double band make a star of eight.
/// </remarks>
internal static class WrappedCorner
{
    /// <summary>Height over the lowest rule where the rows end: so far along the mitre the corner piece reaches.</summary>
    internal static double Reach(TriangleBand band) =>
        band.Rules[band.Rows.Max(row => row.UpperRule)];

    /// <summary>The chips of one side of a corner, y from the lowest rule, x from where the mitre begins on the outer edge.</summary>
    internal static IEnumerable<Point[]> Chips(TriangleBand band, double from, double slope)
    {
        (double Low, double High)[] strips =
        [
            .. band
                .Rows.Select(row => (band.Rules[row.LowerRule], band.Rules[row.UpperRule]))
                .Distinct(),
        ];
        double X(double height) => (from + height) * slope;
        for (var i = 0; i < strips.Length; i++)
        for (var j = i; j < strips.Length; j++)
        {
            var (low, high) = strips[i];
            var (left, right) = (X(strips[j].Low), X(strips[j].High));
            Point a = new(left, low),
                b = new(right, low),
                c = new(right, high),
                d = new(left, high);
            if (i == j)
                yield return [a, b, c];
            else if ((i + j) % 2 == 0)
            {
                yield return [a, b, c];
                yield return [a, c, d];
            }
            else
            {
                yield return [a, b, d];
                yield return [b, c, d];
            }
        }
    }
}
