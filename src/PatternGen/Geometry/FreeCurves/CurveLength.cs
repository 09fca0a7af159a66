namespace PatternGen.Geometry;

/// <summary>Length of a curve by Gauss and Legendre's rule, on halves and halves again until both agree.</summary>
internal static class CurveLength
{
    /// <summary>Places in one use of the rule.</summary>
    private const int Places = 16;

    /// <summary>How nearly a part and its two halves agree, as a share of the whole.</summary>
    private const double Agreement = 1e-14;

    private const int MostHalvings = 40;

    private static readonly (double At, double Weight)[] Rule = Legendre();

    /// <summary>Returns the length in mm between two parameters.</summary>
    internal static double Between(Func<double, CurvePlace> curve, double from, double to)
    {
        var whole = Sum(curve, from, to);
        return Refined(curve, from, to, whole, Agreement * whole, 0);
    }

    private static double Refined(
        Func<double, CurvePlace> curve,
        double from,
        double to,
        double rough,
        double error,
        int halvings
    )
    {
        var middle = from + (to - from) / 2;
        var (first, second) = (Sum(curve, from, middle), Sum(curve, middle, to));
        if (Math.Abs(first + second - rough) <= error || halvings == MostHalvings)
            return first + second;
        return Refined(curve, from, middle, first, error, halvings + 1)
            + Refined(curve, middle, to, second, error, halvings + 1);
    }

    private static double Sum(Func<double, CurvePlace> curve, double from, double to)
    {
        double sum = 0;
        foreach (var (at, weight) in Rule)
            sum += weight * curve(from + (to - from) * at).Along.Length;
        return sum * (to - from);
    }

    /// <summary>Places and weights for 0 to 1: the roots of the Legendre polynomial, by Newton from their usual estimate.</summary>
    private static (double At, double Weight)[] Legendre()
    {
        var rule = new (double, double)[Places];
        for (var i = 0; i < Places; i++)
        {
            var x = Math.Cos(Math.PI * (i + 0.75) / (Places + 0.5));
            double slope = 0;
            for (var tries = 0; tries < 8; tries++)
            {
                var (before, value) = (1.0, x);
                for (var n = 2; n <= Places; n++)
                    (before, value) = (value, ((2 * n - 1) * x * value - (n - 1) * before) / n);
                slope = Places * (x * value - before) / (x * x - 1);
                x -= value / slope;
            }
            rule[i] = ((1 + x) / 2, 1 / ((1 - x * x) * slope * slope));
        }
        return rule;
    }
}
