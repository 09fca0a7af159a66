namespace PatternGen.Tests.Output.Dxf;

/// <summary>Patterns that the tests write, and ways to write them.</summary>
internal static class DxfSamples
{
    /// <summary>A chip of two lines and an arc, 8 mm wide and 4 mm high.</summary>
    public static Contour Triangle { get; } = new([new(0, 0), new(8, 0, 0.1), new(4, 4)]);

    /// <summary>One of everything: chips apart and side by side, mirrored, round and with a hole, lines, wood with a hole, text.</summary>
    public static Pattern Everything()
    {
        var row = Pattern.OfChips(Triangle).Repeated(10, 8);
        return row.With(row.MirroredTopBottom())
            .With(Pattern.OfChips(new Circle(new(50, 20), 5).ToContour()))
            .With(
                Pattern.OfChips(
                    new Region(
                        new Circle(new(78, 24), 6).ToContour(),
                        Triangle.Transformed(Transform.Move(74, 22))
                    ).Parts
                )
            )
            .With(
                Pattern.OfLayoutLines(
                    Chain.Line(new(-10, 0), new(90, 0)),
                    Chain.Line(new(0, 0), new(50, 0)),
                    Chain.Line(new(-10, 10), new(90, 10)),
                    new Chain([new(0, 15, 0.3), new(10, 25), new(20, 25)])
                )
            )
            .With(Pattern.OfLineCuts(new LineCut(Chain.Line(new(0, 12), new(80, 12)), 1)))
            .With(Pattern.OfLabels(new Label("Ø 10", new(60, 20), 2.5)))
            .With(
                Pattern.OfStock(
                    Contour.Rectangle(new(-10, -10), new(90, 40)),
                    new Circle(new(-5, 25), 2).ToContour().Reversed()
                )
            );
    }

    public static byte[] Write(Pattern pattern, SaveOptions? options = null)
    {
        using var stream = new MemoryStream();
        pattern.Save(stream, FileFormat.Dxf, For.Machine, options);
        return stream.ToArray();
    }

    public static DxfDocument Read(Pattern pattern, SaveOptions? options = null) =>
        DxfDocument.Parse(Write(pattern, options));

    public static IReadOnlyList<DxfShape> Chips(Pattern pattern, SaveOptions? options = null) =>
        [.. Read(pattern, options).Shapes.Where(shape => shape.Layer == "CHIPS")];
}
