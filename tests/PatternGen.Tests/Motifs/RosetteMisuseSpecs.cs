namespace PatternGen.Tests.Motifs;

public class RosetteMisuseSpecs
{
    public static TheoryData<string> Factories => [.. Makers.Keys];

    private static readonly Dictionary<string, Func<int, double, Rosette>> Makers = new()
    {
        ["Petals"] = (n, r) => Rosette.Petals(n, r),
        ["Overlaid"] = (n, r) => Rosette.Overlaid(2, n, r, centre: r / 9),
        ["TwoLevel"] = (n, r) => Rosette.TwoLevel(n, r),
        ["PetalRing"] = (n, r) => Rosette.PetalRing(n, r, r / 2, 0),
        ["Wreathed"] = (n, r) => Rosette.Wreathed(n, r),
        ["Scalloped"] = (n, r) => Rosette.Scalloped(n, r),
        ["Star"] = (n, r) => Rosette.Star(n, 2, r),
        ["SplitStar"] = (n, r) => Rosette.SplitStar(n, r),
        ["Rays"] = (n, r) => Rosette.Rays(n, r),
        ["Diamonds"] = (n, r) => Rosette.Diamonds(n, r),
        ["Whirl"] = (n, r) => Rosette.Whirl(n, r),
        ["OverlappingCircles"] = (n, r) => Rosette.OverlappingCircles(n, r),
        ["TouchingCircles"] = (n, r) => Rosette.TouchingCircles(n, r),
        ["Fan"] = (n, r) => Rosette.Fan(n, r),
    };

    [Theory]
    [MemberData(nameof(Factories))]
    public void Numbers_out_of_range_are_refused_with_the_range(string factory)
    {
        var make = Makers[factory];

        foreach (var count in (int[])[int.MinValue, -1, 0, 2, 37, int.MaxValue])
            Should
                .Throw<ArgumentOutOfRangeException>(() => make(count, 40))
                .Message.ShouldContain("between 3 and 36");
        foreach (
            var radius in (double[])
                [
                    double.NaN,
                    double.PositiveInfinity,
                    double.NegativeInfinity,
                    -40,
                    0,
                    0.5,
                    4001,
                    1e300,
                ]
        )
            Should
                .Throw<ArgumentOutOfRangeException>(() => make(12, radius))
                .Message.ShouldContain("between 1 and 4000");
    }

    [Theory]
    [MemberData(nameof(Factories))]
    public void The_smallest_and_the_largest_can_be_drawn(string factory)
    {
        foreach (var count in (int[])[6, 36])
        foreach (var radius in (double[])[count == 6 ? 1 : 2, 4000])
            Arrangement.Of(Makers[factory](count, radius).Curves).Validate().ShouldBeEmpty();
    }

    public static TheoryData<string, Func<Rosette>, string> Impossible =>
        new()
        {
            { "a disc over all", () => Rosette.Petals(12, 40, centre: 80), "less than 80 mm" },
            { "more circle than rim", () => Rosette.TwoLevel(8, 40, 40), "less than 40 mm" },
            { "a disc over the level", () => Rosette.TwoLevel(8, 40, 10, 20), "less than 20 mm" },
            { "no ring", () => Rosette.PetalRing(8, 40, 45), "a radius of more than 45 mm" },
            {
                "a wide ridge",
                () => Rosette.PetalRing(6, 40, 2, 2),
                "a ridge of less than 2 mm; an inner radius of more than 2 mm"
            },
            { "a wreath of five", () => Rosette.Wreathed(5, 40), "6 petals or more" },
            {
                "a disc on leaves",
                () => Rosette.Wreathed(6, 40, 60),
                // 2 × 40 (√3 − 1)
                "a centre of less than 58.56406"
            },
            { "a small inner circle", () => Rosette.Scalloped(4, 40, 20), "more than 28.28427" },
            { "a large inner circle", () => Rosette.Scalloped(4, 40, 40), "less than 40 mm" },
            { "a star that is a polygon", () => Rosette.Star(8, 1, 40), "a number from 2 to 3" },
            { "a star of diameters", () => Rosette.Star(8, 4, 40), "a number from 2 to 3" },
            { "a star of four", () => Rosette.Star(4, 2, 40), "5 points" },
            { "a star of no end", () => Rosette.Star(8, int.MaxValue, 40), "a number from 2 to 3" },
            { "flat points", () => Rosette.SplitStar(3, 40, 20), "less than 20 mm" },
            { "flat rays", () => Rosette.Rays(6, 40, 36), "less than 34.641016 mm" },
            // cos 60° / (2 − cos 60°) is a third.
            { "flat diamonds", () => Rosette.Diamonds(3, 39, 13), "less than 13 mm" },
            { "short arcs", () => Rosette.Whirl(8, 40, arcRadius: 20), "more than 20 mm" },
            { "circles apart", () => Rosette.OverlappingCircles(6, 40, 30), "less than 26.666667" },
            { "a closed fan", () => Rosette.Fan(5, 40, 30, 30), "10 to 350 degrees" },
            { "a whole turn", () => Rosette.Fan(5, 40, 0, 360), "10 to 350 degrees" },
            {
                "many petals",
                () => Rosette.Overlaid(3, 30, 40),
                "at most 24 petals in each of 3 sets"
            },
            // 40 sin 15° / sin 30° is 20.705524.
            { "a disc over crossings", () => Rosette.Overlaid(2, 6, 40, centre: 50), "41.411047" },
            {
                "no plain centre",
                () => Rosette.Nested(Rosette.Petals(6, 40), Rosette.Petals(6, 10)),
                "a plain centre at least 20 mm wide"
            },
            {
                "a small plain centre",
                () => Rosette.Nested(Rosette.Rays(12, 40, 9), Rosette.Petals(6, 10)),
                "at most 9 mm radius"
            },
        };

    [Theory]
    [MemberData(nameof(Impossible), DisableDiscoveryEnumeration = true)]
    public void What_cannot_be_made_is_refused_with_numbers_that_work(
        string what,
        Func<Rosette> make,
        string remedy
    )
    {
        var refusal = Should.Throw<PatternException>(make, what);

        refusal.Remedies.ShouldNotBeEmpty();
        string.Join("; ", refusal.Remedies).ShouldContain(remedy);
    }

    [Fact]
    public void Other_misuse_is_refused_by_name()
    {
        Refused(() => Rosette.Petals(12, 40, centre: -1), "centre");
        Refused(() => Rosette.Petals(12, 40, centre: double.NaN), "centre");
        Refused(() => Rosette.TwoLevel(12, 40, inner: 0), "inner");
        Refused(() => Rosette.PetalRing(12, 40, 20, ridge: -0.1), "ridge");
        Refused(() => Rosette.Overlaid(1, 6, 40), "sets");
        Refused(() => Rosette.Overlaid(7, 6, 40), "sets");
        Refused(() => Rosette.Overlaid(2, 6, 40, (PetalCrossing)5), "crossing");
        Refused(() => Rosette.Whirl(6, 40, (WhirlTurn)5), "turn");
        Refused(() => Rosette.Whirl(6, 40, arcRadius: double.PositiveInfinity), "arcRadius");
        Refused(() => Rosette.Fan(6, 40, fromDegrees: double.NaN), "fromDegrees");
        Refused(() => Rosette.Petals(6, 40).WithinPolygon(2), "sides");
        Refused(() => Rosette.Petals(6, 40).WithinPolygon(13), "sides");
        Refused(() => Rosette.Petals(6, 40).WithinPolygon(4, gap: -1), "gap");
        // So small that their lines would merge with the centre or with each other.
        Refused(() => Rosette.Petals(12, 40, centre: 1e-6), "centre");
        Refused(() => Rosette.OverlappingCircles(12, 40, centre: 1e-6), "centre");
        Refused(() => Rosette.Rays(12, 40, inner: 1e-7), "inner");
        Refused(() => Rosette.Petals(6, 40).WithinPolygon(4, gap: 1e-8), "gap");
        Should.Throw<ArgumentNullException>(() => Rosette.Nested(null!, Rosette.Petals(6, 40)));
        Should.Throw<ArgumentNullException>(() => Rosette.Nested(Rosette.Petals(6, 40), null!));

        static void Refused(Func<Rosette> make, string name) =>
            Should.Throw<ArgumentOutOfRangeException>(make).ParamName.ShouldBe(name);
    }
}
