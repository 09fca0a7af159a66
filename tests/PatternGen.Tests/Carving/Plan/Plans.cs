namespace PatternGen.Tests.Carving.Plan;

/// <summary>Patterns that plans are tried on, and how the tests look at them.</summary>
internal static class Plans
{
    internal static readonly Knife Knife = Knife.Held(65);

    internal static readonly Stock Board = Stock.Thick(12);

    internal static Pattern Rail { get; } =
        PatternGen
            .Rail.Of(742.5, 36)
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
            .EndMargins(6);

    internal static Pattern Petals { get; } = Rosette.Petals(6, 40).Carve(part => part.IsPetal);

    internal static Pattern Wreath { get; } = Rosette.Wreathed(6, 40).Carve(_ => true);

    /// <summary>Rows facing each other, a filled strip whose chips share sides, a rosette, a ring, an L and a stab-cut chip.</summary>
    internal static Pattern Combined { get; } =
        Pattern.Combine(
            PatternGen
                .Rail.Of(120, 60)
                .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 4)
                .EndMargins(6),
            PatternGen
                .Rail.Of(120, 20)
                .Border(TriangleBand.Ruled(2, 6, 2).Adjacent(), fromEdge: 4)
                .EndMargins(6)
                .Moved(0, 70),
            Rosette.Wreathed(6, 20).Carve(_ => true).Moved(30, 130),
            Pattern
                .OfChips(
                    new Region(
                        new Circle(Point.Origin, 8).ToContour(),
                        new Circle(Point.Origin, 3).ToContour()
                    ).Parts
                )
                .Moved(80, 130),
            Pattern
                .OfChips(
                    Contour.Polygon(
                        new(0, 0),
                        new(9, 0),
                        new(9, 4),
                        new(5, 4),
                        new(5, 11),
                        new(0, 11)
                    )
                )
                .Turned(17)
                .Moved(100, 100),
            Pattern
                .OfChips(Contour.Polygon(new(0, 0), new(6, 0), new(3, 4)))
                .WithCut(ChipCut.Stabbed(2))
                .Turned(-33)
                .Moved(100, 150)
        );

    internal static CarvingPlan Of(Pattern pattern) => pattern.Plan(Knife, Board);

    internal static Contour Square(double x, double y, double side) =>
        Contour.Rectangle(new(x, y), new(x + side, y + side));

    /// <summary>From one direction to another, from -180 to 180 degrees.</summary>
    internal static double Between(double from, double to) =>
        (to - from) - 360 * Math.Round((to - from) / 360);

    internal static IEnumerable<CarvingPlan> AllWays(Pattern pattern) =>
        from technique in Enum.GetValues<Technique>()
        from hand in Enum.GetValues<Hand>()
        let plan = Of(pattern).With(technique).With(hand)
        from ordered in (CarvingPlan[])[plan.ByChip(), plan.ByPasses()]
        select ordered;
}
