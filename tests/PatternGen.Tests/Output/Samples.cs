namespace PatternGen.Tests.Output;

/// <summary>Patterns that the output tests write.</summary>
internal static class Samples
{
    /// <summary>A lens of two equal arcs along the x axis.</summary>
    internal static Contour Lens(double length, double bulge) =>
        new(new Vertex(0, 0, bulge), new Vertex(length, 0, bulge));

    /// <summary>A board with something on every layer.</summary>
    internal static Pattern Board() =>
        Pattern
            .Combine(
                Pattern.OfStock(
                    Contour.Rectangle(Point.Origin, new(130, 110)),
                    new Circle(new(120, 100), 3).ToContour().Reversed()
                ),
                Pattern.OfLayoutLines(Chain.Line(new(0, 55), new(130, 55))),
                Pattern.OfLineCuts(new LineCut(Chain.Line(new(10, 20), new(120, 20)), 1.5)),
                Pattern
                    .OfChips(Lens(28, 0.3), new Circle(new(14, 12), 2).ToContour())
                    .Repeated(3, 31)
                    .Moved(20, 60),
                Pattern.OfLabels(new Label("No. 7", new(5, 100), 4))
            )
            .Named("Practice board");

    /// <summary>A rail with two rows of triangles at an odd pitch.</summary>
    internal static Pattern Rail(double length = 742.5)
    {
        var count = (int)(length / 8) - 1;
        var pitch = (length - 12) / count;
        var row = Pattern
            .OfChips(Contour.Polygon(new(0, 0), new(pitch, 0), new(pitch / 2, 4)))
            .Repeated(count, pitch);
        return Pattern
            .Combine(
                Pattern.OfStock(Contour.Rectangle(Point.Origin, new(length, 36))),
                row.Moved(6, 18),
                row.MirroredTopBottom().Moved(6, 18)
            )
            .Named("Rail");
    }
}
