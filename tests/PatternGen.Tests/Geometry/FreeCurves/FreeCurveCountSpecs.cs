namespace PatternGen.Tests.Geometry;

/// <summary>How many arcs a curve takes, against the least that can be.</summary>
public class FreeCurveCountSpecs
{
    private const int Places = 240;

    public static TheoryData<string, double> Curves =>
        new()
        {
            { "wave", 0.01 },
            { "wave", 0.1 },
            { "bow", 0.02 },
            { "loop", 0.05 },
        };

    [Theory]
    [MemberData(nameof(Curves))]
    public void Hardly_more_arcs_are_laid_than_the_best_choice_of_places_needs(
        string name,
        double accuracy
    )
    {
        var controls = Named(name);
        var chain = FreeCurve
            .Bezier(controls[0], controls[1], controls[2], controls[3])
            .ToChain(accuracy);

        // The best way from the start to each of many places, by dynamic programming.
        var least = Least(controls, accuracy);

        // The fit may choose places between those of the test; laying as far as it goes may cost a pair.
        chain.Count.ShouldBeLessThanOrEqualTo(2 * (least + 1));
    }

    [Fact]
    public void The_count_goes_with_the_cube_root_of_the_accuracy()
    {
        // A pair that is h long is off by k' h³/324, with k' the change of curvature by the arc; so an accuracy e asks for
        // the integral of (k' / (324 e))^(1/3) along the curve. For an ellipse k = a b / w³, w² = a² sin² + b² cos², and
        // k' = 3 a b (a² - b²) |sin cos| / w⁶.
        const double a = 40;
        const double b = 15;
        const double e = 1e-5;
        double pairs = 0;
        const int steps = 100_000;
        for (var i = 0; i < steps; i++)
        {
            var (sin, cos) = Math.SinCos(Math.Tau * (i + 0.5) / steps);
            var w = Math.Sqrt(a * a * sin * sin + b * b * cos * cos);
            var change = 3 * a * b * (a * a - b * b) * Math.Abs(sin * cos) / Math.Pow(w, 6);
            pairs += Math.Cbrt(change / (324 * e)) * w * Math.Tau / steps;
        }

        var count = FreeCurve.Ellipse(Point.Origin, a, b).ToContour(e).Count;

        // At the four ends of the axes k' is 0 and the law asks for no arcs at all: a tenth is left for these.
        (count / (2 * pairs)).ShouldBeLessThan(1.1);
    }

    private static Point[] Named(string name) =>
        name switch
        {
            "wave" => [new(0, 0), new(60, 80), new(40, -80), new(100, 0)],
            "bow" => [new(0, 0), new(10, 60), new(80, 70), new(120, 0)],
            _ => [new(0, 0), new(120, 80), new(-60, 80), new(60, 0)],
        };

    private static int Least(Point[] controls, double accuracy)
    {
        const int finer = 4;
        var points = Enumerable
            .Range(0, Places * finer + 1)
            .Select(i => Draw.Bernstein(controls, (double)i / (Places * finer)))
            .ToArray();
        var headings = Enumerable
            .Range(0, Places + 1)
            .Select(i => Heading(controls, (double)i / Places))
            .ToArray();
        var least = new int[Places + 1];
        for (var end = 1; end <= Places; end++)
        {
            least[end] = int.MaxValue;
            for (var start = 0; start < end; start++)
                if (least[start] + 1 < least[end] && Fits(start, end))
                    least[end] = least[start] + 1;
        }
        return least[Places];

        bool Fits(int start, int end)
        {
            var (from, to) = (points[start * finer], points[end * finer]);
            var chord = to - from;
            if (
                Math.Min(chord.Dot(headings[start]), chord.Dot(headings[end]))
                < -0.5 * chord.Length
            )
                return false;
            var run = Chain.Of(Biarc.Between(from, headings[start], to, headings[end]).Segments);
            // Arcs round the back are no following.
            if (
                run.Length
                > 1.5
                    * Enumerable
                        .Range(start * finer, (end - start) * finer)
                        .Sum(i => points[i].DistanceTo(points[i + 1]))
            )
                return false;
            for (var i = start * finer + 1; i < end * finer; i++)
                if (run.DistanceTo(points[i]) > accuracy)
                    return false;
            return true;
        }
    }

    private static Vector Heading(Point[] p, double t)
    {
        var s = 1 - t;
        return (s * s * (p[1] - p[0]) + 2 * s * t * (p[2] - p[1]) + t * t * (p[3] - p[2])).Unit();
    }
}
