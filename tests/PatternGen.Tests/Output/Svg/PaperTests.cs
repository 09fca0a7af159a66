namespace PatternGen.Tests.Output.Svg;

public class PaperTests
{
    [Theory]
    [InlineData(20, 15)]
    [InlineData(742.5, 36)]
    [InlineData(130, 110)]
    [InlineData(30, 400)]
    public void Every_sheet_carries_a_bar_of_100_mm_each_way(double width, double height)
    {
        var file = WrittenSvg.Of(Board(width, height), For.Paper);
        var lines = file.Runs("check-bar").SelectMany(run => run).ToArray();
        var bars = lines.Where(line => IsNear((line.End - line.Start).Length, 100)).ToArray();
        bars.Count(bar => bar.Start.Y == bar.End.Y).ShouldBe(1);
        bars.Count(bar => bar.Start.X == bar.End.X).ShouldBe(1);
    }

    /// <summary>Printers leave about 5 mm white; browsers count in pixels of 1/96 inch, 12 of which are 3.175 mm.</summary>
    [Theory]
    [InlineData(20, 15)]
    [InlineData(742.5, 36)]
    [InlineData(130, 110)]
    public void Sheets_are_whole_pixels_with_a_free_edge(double width, double height)
    {
        var file = WrittenSvg.Of(Board(width, height), For.Paper);
        (file.Width / 3.175 % 1).ShouldBe(0, 1e-9);
        (file.Height / 3.175 % 1).ShouldBe(0, 1e-9);
        var points = Boxes(file).SelectMany(box => new[] { box.Min, box.Max }).ToArray();
        points.Min(point => point.X).ShouldBeGreaterThan(5);
        points.Min(point => point.Y).ShouldBeGreaterThan(5);
        points.Max(point => point.X).ShouldBeLessThan(file.Width - 5);
        points.Max(point => point.Y).ShouldBeLessThan(file.Height - 5);
    }

    [Theory]
    [InlineData(20, 15)]
    [InlineData(742.5, 36)]
    [InlineData(130, 110)]
    [InlineData(300, 101)]
    public void Piece_caption_and_bars_do_not_overlap(double width, double height)
    {
        var boxes = Boxes(WrittenSvg.Of(Board(width, height), For.Paper)).ToArray();
        boxes.Length.ShouldBeGreaterThan(4);
        for (var i = 0; i < boxes.Length; i++)
        for (var j = 0; j < i; j++)
            boxes[i].Touches(boxes[j]).ShouldBeFalse($"{boxes[i]} and {boxes[j]}");
    }

    [Fact]
    public void Long_captions_are_broken_at_spaces()
    {
        var name = string.Join(' ', Enumerable.Repeat("spruce", 60));
        var file = WrittenSvg.Of(Board(200, 20).Named(name), For.Paper);
        file.Paths("caption").Count().ShouldBeGreaterThan(3);
        file.Width.ShouldBeLessThan(200 + 2 * 10 + 20); // the piece, free edges, the upright bar
        string.Join(' ', file.Paths("caption").Select(Label)).ShouldBe(name);
    }

    [Fact]
    public void The_words_can_be_replaced()
    {
        var options = SaveOptions.Default.WithWording(new German());
        var labels = WrittenSvg
            .Of(Board(130, 110), For.Paper, options)
            .Paths("check-bar")
            .Select(Label);
        labels.First().ShouldStartWith("Ungezoomt drucken");
    }

    [Fact]
    public void Sides_drawn_once_have_no_fill()
    {
        var options = SaveOptions.Default.WithSharedSides(SharedSides.Once);
        var file = WrittenSvg.Of(Samples.Rail(100), For.Paper, options);
        file.Group("chips")!.Attribute("fill")!.Value.ShouldBe("none");
        var length = file.Runs("chips")
            .SelectMany(run => run)
            .Sum(side => (side.End - side.Start).Length);
        var closed = WrittenSvg.Of(Samples.Rail(100), For.Paper).Runs("chips");
        var twice = closed.SelectMany(run => run).Sum(side => (side.End - side.Start).Length);
        // The two rows share their bases, 88 mm in all.
        length.ShouldBe(twice - 88, 1e-3);
    }

    private static Pattern Board(double width, double height) =>
        Pattern
            .OfStock(Contour.Rectangle(Point.Origin, new(width, height)))
            .Named("Lid of the box");

    private static string Label(System.Xml.Linq.XElement path) =>
        (string)path.Attribute("aria-label")!;

    private static bool IsNear(double a, double b) => Math.Abs(a - b) < 1e-5;

    /// <summary>What each path takes up.</summary>
    private static IEnumerable<Extents> Boxes(WrittenSvg file) =>
        new[] { "stock", "caption", "check-bar" }
            .SelectMany(file.Paths)
            .Select(path =>
                SvgPathReader
                    .Read((string)path.Attribute("d")!)
                    .SelectMany(run => run)
                    .SelectMany(piece => piece.Sample(8))
                    .Aggregate(
                        (Extents?)null,
                        (box, point) => box?.Including(point) ?? Extents.Of(point)
                    )
                    .ShouldNotBeNull()
            );

    private sealed class German : Wording
    {
        public override string CheckBar(double length) =>
            $"Ungezoomt drucken; der Balken ist {Millimetres(length)} lang.";
    }
}
