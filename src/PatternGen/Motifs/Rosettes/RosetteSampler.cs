namespace PatternGen;

/// <summary>Rosettes to begin with, 80 mm across: one of each family at least.</summary>
public static class RosetteSampler
{
    private const double Radius = 40;

    /// <summary>The rosettes by name, in learning order.</summary>
    public static IReadOnlyList<NamedRosette> All { get; } =
    [
        new("Six petals", Rosette.Petals(6, Radius)),
        new("Six petals in a wreath", Rosette.Wreathed(6, Radius)),
        new("Twelve petals", Rosette.Petals(12, Radius)),
        new("Second six", Rosette.Overlaid(2, 6, Radius, PetalCrossing.Stopped)),
        new("Second six drawn through", Rosette.Overlaid(2, 6, Radius), 2, 4),
        new("Net of petals", Rosette.Overlaid(3, 8, Radius, centre: 6)),
        new("Two levels", Rosette.TwoLevel(8, Radius)),
        new("Ring of petals", Rosette.PetalRing(24, Radius, 14)),
        new("Scalloped rim", Rosette.Scalloped(10, Radius), 2, 4),
        new("Pointed star", Rosette.Star(8, 3, Radius), 2, 4),
        new("Two triangles", Rosette.Star(6, 2, Radius), 2, 3),
        new("Split star", Rosette.SplitStar(8, Radius)),
        new("Rays", Rosette.Rays(16, Radius)),
        new("Whirl", Rosette.Whirl(16, Radius, centre: 6)),
        new("Overlapping circles", Rosette.OverlappingCircles(12, Radius), 3, 4, 6),
        new("Touching circles", Rosette.TouchingCircles(9, Radius), 2, 4),
        new("Half fan", Rosette.Fan(7, Radius)),
        new(
            "Petals within rays",
            Rosette.Nested(Rosette.Rays(24, Radius, 26), Rosette.Wreathed(6, 24))
        ),
        new("Ring of diamonds", Rosette.Diamonds(16, Radius)),
        new(
            "Petals within diamonds",
            Rosette.Nested(Rosette.Diamonds(24, Radius, 28), Rosette.Petals(8, 26))
        ),
        new(
            "Whirl in a square",
            Rosette.Whirl(12, 36, WhirlTurn.Right, centre: 12).WithinPolygon(4),
            2,
            3,
            4,
            5
        ),
    ];
}
