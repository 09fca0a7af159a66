namespace PatternGen.Tests.Output;

/// <summary>Patterns whose chips are repeated in every way, each on a board.</summary>
internal static class RepeatSamples
{
    /// <summary>A chip of four arcs that is unlike its mirror image.</summary>
    public static Contour Petal { get; } =
        new([new(20, 0, 0.25), new(40, -3, 0.1), new(55, 0, 0.25), new(40, 4, -0.1)]);

    /// <summary>A petal of a hundred, 3.6° apart.</summary>
    public static Pattern Rosette { get; } = MakeRosette();

    public static Pattern Rail { get; } =
        PatternGen
            .Rail.Of(742.5, 36)
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
            .EndMargins(6);

    /// <summary>Moved, turned, mirrored once and twice, and of two sizes; chips and circles.</summary>
    public static Pattern Mixed { get; } = MakeMixed();

    /// <summary>Two chips, each there once, and one of them like the other but mirrored.</summary>
    public static Pattern Alone { get; } = MakeAlone();

    /// <summary>Discs with a triangle and a circle standing in them, moved, turned, mirrored and of two sizes.</summary>
    public static Pattern Holed { get; } = MakeHoled();

    public static IReadOnlyDictionary<string, Pattern> All { get; } =
        new Dictionary<string, Pattern>
        {
            ["rosette"] = Rosette,
            ["rail"] = Rail,
            ["mixed"] = Mixed,
            ["alone"] = Alone,
            ["holed"] = Holed,
        };

    private static Pattern MakeRosette()
    {
        var narrow = Contour.Polygon(new(20, 0), new(40, -0.6), new(55, 0), new(40, 0.6));
        var petal = Pattern.OfChips(narrow);
        return OnBoard(Enumerable.Range(0, 100).Select(i => petal.Turned(3.6 * i)), 60);
    }

    private static Pattern MakeMixed()
    {
        var row = Pattern
            .OfChips(Petal, new Circle(new(10, 10), 4).ToContour())
            .Repeated(5, 1000.0 / 17);
        return OnBoard(
            [
                row,
                row.Turned(31).Moved(0, 60),
                row.MirroredTopBottom(-20),
                row.MirroredLeftRight().MirroredTopBottom().Moved(300, -100),
                row.Scaled(1.0 / 3).Turned(-90).Moved(-50, -50),
            ],
            400
        );
    }

    private static Pattern MakeAlone()
    {
        var petal = Pattern.OfChips(Petal);
        return OnBoard([petal, petal.MirroredTopBottom(-20)], 80);
    }

    private static Pattern MakeHoled()
    {
        var disc = new Region(
            new Circle(Point.Origin, 9).ToContour(),
            Contour.Polygon(new(-3, -2), new(4, -2), new(0, 5)),
            new Circle(new(-5, 2), 1.5).ToContour()
        );
        var row = Pattern.OfChips(disc.Parts).Repeated(4, 71.0 / 3);
        return OnBoard(
            [
                row,
                row.Turned(31).Moved(0, 60),
                row.MirroredTopBottom(-20),
                row.Scaled(1.0 / 3).Turned(-90).Moved(-50, -50),
            ],
            150
        );
    }

    private static Pattern OnBoard(IEnumerable<Pattern> parts, double reach) =>
        Pattern
            .Combine(parts)
            .With(Pattern.OfStock(Contour.Rectangle(new(-reach, -reach), new(reach, reach))));
}
