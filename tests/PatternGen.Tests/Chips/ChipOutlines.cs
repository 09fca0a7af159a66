using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

/// <summary>Chips that several tests use, in mm.</summary>
internal static class ChipOutlines
{
    /// <summary>A triangle with the given sides, the last one on the x axis.</summary>
    internal static Contour Triangle(double a, double b, double c)
    {
        var x = (b * b + c * c - a * a) / (2 * c);
        return Contour.Polygon(new(0, 0), new(c, 0), new(x, Math.Sqrt(b * b - x * x)));
    }

    internal static Contour Equilateral(double side) => Triangle(side, side, side);

    internal static Contour Regular(int corners, double side) =>
        Shapes.Regular(corners, side / (2 * Math.Sin(Math.PI / corners)));

    /// <summary>The lens of two circles, one about the origin and one to the right of it.</summary>
    internal static Contour Lens(double left, double right, double apart)
    {
        // MathWorld, Circle-Circle Intersection: x = (d² - r² + R²) / 2d.
        var x = (apart * apart - right * right + left * left) / (2 * apart);
        var y = Math.Sqrt(left * left - x * x);
        return new(
            new Vertex(new(x, -y), Math.Tan(Math.Atan2(y, x) / 2)),
            new Vertex(new(x, y), Math.Tan(Math.Atan2(y, apart - x) / 2))
        );
    }

    internal static Contour Reuleaux(double width) => Curved(width, 60);

    /// <summary>An equilateral triangle whose sides are arcs over the given angle, hollow if it is negative.</summary>
    internal static Contour Curved(double side, double degrees) =>
        new(
            Equilateral(side)
                .Vertices.Select(corner => new Vertex(
                    corner.Point,
                    Math.Tan(Angle.FromDegrees(degrees).Radians / 4)
                ))
        );

    /// <summary>The upper half of a disc about the origin.</summary>
    internal static Contour Semicircle(double radius) =>
        new(new Vertex(new(-radius, 0)), new Vertex(new(radius, 0), 1));

    /// <summary>A piece of pie with its tip in the origin.</summary>
    internal static Contour Sector(double radius, double degrees)
    {
        var arc = Segment.Arc(Point.Origin, radius, Angle.Zero, Angle.FromDegrees(degrees));
        return new(new Vertex(Point.Origin), new Vertex(arc.Start, arc.Bulge), new Vertex(arc.End));
    }

    /// <summary>The gap among four unit circles that touch, whose centres are those of a square of side 2.</summary>
    internal static Contour GapAmongFour { get; } = FourHollows();

    internal static Roof Ring(Contour outer, params Contour[] holes) =>
        Roof.Over(new Region(holes.Prepend(outer)).Parts.ShouldHaveSingleItem());

    private static Contour FourHollows()
    {
        var hollow = -Math.Tan(Math.PI / 8);
        return new(
            new Vertex(new(1, 0), hollow),
            new Vertex(new(2, 1), hollow),
            new Vertex(new(1, 2), hollow),
            new Vertex(new(0, 1), hollow)
        );
    }
}
