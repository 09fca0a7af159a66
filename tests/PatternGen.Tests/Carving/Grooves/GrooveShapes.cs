namespace PatternGen.Tests.Carving.Grooves;

/// <summary>Invented chips whose valleys are of every kind.</summary>
internal static class GrooveShapes
{
    public static Contour Triangle { get; } =
        Contour.Polygon(new Point(0, 0), new(10, 0), new(3, 6));

    public static Contour Square { get; } = Contour.Rectangle(new(0, 0), new(6, 6));

    public static Contour Rectangle { get; } = Contour.Rectangle(new(0, 0), new(12, 5));

    /// <summary>Two arcs that bend alike: its valley is straight and as deep as a conic.</summary>
    public static Contour Lens { get; } = new([new(0, 0, 0.3), new(14, 0, 0.3)]);

    /// <summary>Two bulging arcs that do not bend alike: an ellipse would take one hollow; this is a hyperbola.</summary>
    public static Contour Petal { get; } = new([new(0, 0, 0.15), new(14, 2, 0.5)]);

    /// <summary>A bulging and a hollow arc: ellipse.</summary>
    public static Contour Crescent { get; } = new([new(0, 0, 0.7), new(14, 0, -0.35)]);

    /// <summary>A straight side and an arc: parabola.</summary>
    public static Contour Semicircle { get; } = new([new(0, 0), new(9, 0, 1)]);

    /// <summary>Three hollow sides.</summary>
    public static Contour Hollow { get; } =
        new([new(0, 0, -0.2), new(12, 0, -0.2), new(6, 10, -0.2)]);

    /// <summary>Three hollow arcs that touch each other in its tips, which have no width there.</summary>
    public static Contour Cusps { get; } =
        new([
            new(0, 0, -Math.Tan(Math.PI / 12)),
            new(12, 0, -Math.Tan(Math.PI / 12)),
            new(6, 6 * Math.Sqrt(3), -Math.Tan(Math.PI / 12)),
        ]);

    public static Contour Ell { get; } =
        Contour.Polygon(new Point(0, 0), new(12, 0), new(12, 4), new(5, 4), new(5, 9), new(0, 9));

    /// <summary>A hollow side beside a bulging and a straight one.</summary>
    public static Contour Sail { get; } = new([new(0, 0, -0.2), new(11, 1, 0.25), new(4, 9)]);

    /// <summary>Round ends: no tip.</summary>
    public static Contour Stadium { get; } =
        new([new(0, 0), new(8, 0, 1), new(8, 4), new(0, 4, 1)]);

    /// <summary>One tip, and round at the other end.</summary>
    /// <remarks>Tangents from (0, 0) to the circle of 3 mm about (10, 0): they touch it at the cosine -3/10.</remarks>
    public static Contour Drop { get; } =
        new([
            new(0, 0),
            new(9.1, -Math.Sqrt(8.19), Math.Tan(Math.Acos(-0.3) / 2)),
            new(9.1, Math.Sqrt(8.19)),
        ]);

    public static Contour Disc { get; } = new Circle(new(1, 2), 3).ToContour();

    public static Region Ring { get; } =
        new(new Circle(new(0, 0), 9).ToContour(), new Circle(new(0, 0), 5).ToContour().Reversed());

    public static Region EccentricRing { get; } =
        new(
            new Circle(new(0, 0), 9).ToContour(),
            new Circle(new(1.5, 0.5), 5).ToContour().Reversed()
        );

    public static Region Holed { get; } =
        new(
            Contour.Rectangle(new(0, 0), new(16, 12)),
            new Circle(new(6, 6), 2.5).ToContour().Reversed()
        );

    public static IEnumerable<(string Name, Pattern Pattern)> All()
    {
        (string, Contour)[] outlines =
        [
            ("triangle", Triangle),
            ("square", Square),
            ("rectangle", Rectangle),
            ("lens", Lens),
            ("petal", Petal),
            ("crescent", Crescent),
            ("semicircle", Semicircle),
            ("hollow", Hollow),
            ("cusps", Cusps),
            ("ell", Ell),
            ("sail", Sail),
            ("stadium", Stadium),
            ("drop", Drop),
            ("disc", Disc),
        ];
        foreach (var (name, outline) in outlines)
            yield return (name, Pattern.OfChips(outline));
        yield return ("ring", Pattern.OfChips(Ring.Parts));
        yield return ("eccentric ring", Pattern.OfChips(EccentricRing.Parts));
        yield return ("holed", Pattern.OfChips(Holed.Parts));
    }
}
