namespace PatternGen.Tests.Geometry;

/// <summary>Named contours that tests share, in mm.</summary>
internal static class Shapes
{
    private static readonly double Quarter = Math.Tan(Math.PI / 8);

    internal static Contour Square(double side) => Contour.Rectangle(new(0, 0), new(side, side));

    /// <summary>Two half circles and two lines, lying; the straight part is <paramref name="straight"/> long.</summary>
    internal static Contour Stadium(double straight, double radius) =>
        new([new(0, -radius), new(straight, -radius, 1), new(straight, radius), new(0, radius, 1)]);

    internal static Contour RoundedRectangle(double width, double height, double radius) =>
        new([
            new(radius, 0),
            new(width - radius, 0, Quarter),
            new(width, radius),
            new(width, height - radius, Quarter),
            new(width - radius, height),
            new(radius, height, Quarter),
            new(0, height - radius),
            new(0, radius, Quarter),
        ]);

    /// <summary>The lens of two circles of one radius through (0, 0) and (length, 0).</summary>
    internal static Contour Lens(double length, double radius)
    {
        var bulge = Math.Tan(Math.Asin(length / 2 / radius) / 2);
        return new([new(0, 0, bulge), new(length, 0, bulge)]);
    }

    /// <summary>Two squares of side 10 joined by a neck of the given width and length 10.</summary>
    internal static Contour DumbBell(double neck) =>
        Contour.Polygon(
            new(0, 0),
            new(10, 0),
            new(10, 5 - neck / 2),
            new(20, 5 - neck / 2),
            new(20, 0),
            new(30, 0),
            new(30, 10),
            new(20, 10),
            new(20, 5 + neck / 2),
            new(10, 5 + neck / 2),
            new(10, 10),
            new(0, 10)
        );

    /// <summary>A square of side 2 less one of side 1.</summary>
    internal static Contour LShape { get; } =
        Contour.Polygon(new(0, 0), new(2, 0), new(2, 1), new(1, 1), new(1, 2), new(0, 2));

    /// <summary>The gap among three unit circles that touch each other: three hollow sides, three cusps.</summary>
    internal static Contour Gap { get; } = Hollow();

    internal static Contour Regular(int corners, double radius) =>
        Contour.Polygon(
            Enumerable
                .Range(0, corners)
                .Select(i => Point.Origin.Polar(radius, Angle.OfTurn((double)i / corners)))
        );

    internal static Contour Circle(double radius, double x = 0, double y = 0) =>
        new Circle(new(x, y), radius).ToContour();

    internal static IEnumerable<(string Name, Contour Contour)> All =>
        [
            ("square", Square(10)),
            ("stadium", Stadium(10, 3)),
            ("rounded rectangle", RoundedRectangle(20, 10, 2)),
            ("lens", Lens(10, 8)),
            ("dumb-bell", DumbBell(4)),
            ("L", LShape),
            ("gap", Gap),
            ("hexagon", Regular(6, 5)),
            ("circle", Circle(4, 1, 2)),
        ];

    private static Contour Hollow()
    {
        // Centres on an equilateral triangle of side 2; the circles touch in the middles of its sides.
        var (a, b, c) = (new Point(0, 0), new Point(2, 0), new Point(1, Math.Sqrt(3)));
        var hollow = -Math.Tan(Math.PI / 12);
        return new([
            new(a.Towards(b, 0.5), hollow),
            new(b.Towards(c, 0.5), hollow),
            new(c.Towards(a, 0.5), hollow),
        ]);
    }
}
