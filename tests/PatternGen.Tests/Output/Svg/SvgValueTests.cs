namespace PatternGen.Tests.Output.Svg;

/// <summary>Values from the SVG specification and from definitions.</summary>
public class SvgValueTests
{
    /// <summary>SVG 1.1, chapter 7 (coordinate systems): width and height in mm and the same numbers in viewBox make 1 unit 1 mm.</summary>
    [Fact]
    public void One_unit_is_one_millimetre()
    {
        var file = WrittenSvg.Of(Board(238, 100), For.Viewing);
        file.Root.Attribute("width")!.Value.ShouldBe("254mm");
        file.Root.Attribute("height")!.Value.ShouldBe("116mm");
        file.Root.Attribute("viewBox")!.Value.ShouldBe("0 0 254 116");
    }

    /// <summary>CSS Paged Media: the page asks for its own size, else browsers shrink the drawing to their paper.</summary>
    [Theory]
    [InlineData(For.Viewing)]
    [InlineData(For.Paper)]
    [InlineData(For.Machine)]
    public void The_page_is_as_large_as_the_drawing(For purpose)
    {
        var file = WrittenSvg.Of(Board(742.5, 36), purpose);
        var (width, height) = (
            (string)file.Root.Attribute("width")!,
            (string)file.Root.Attribute("height")!
        );
        file.Text.ShouldContain($"<style>@page{{size:{width} {height};margin:0}}</style>");
    }

    /// <summary>
    /// SVG Implementation Notes: sweep flag 1 turns through increasing angles, clockwise on screen. A bulge above 0
    /// turns counter-clockwise on paper, so its flag is 0, and 1 for a bulge below 0.
    /// </summary>
    [Theory]
    [InlineData(0.3, false)]
    [InlineData(-0.3, true)]
    public void The_sweep_flag_is_set_for_clockwise_arcs(double bulge, bool flag)
    {
        var line = new Chain(new Vertex(0, 0, bulge), new Vertex(10, 0));
        var arc = WrittenSvg
            .Of(Pattern.OfLayoutLines(line), For.Machine)
            .Runs("layout-lines")
            .Single()
            .Single();
        arc.IsSweep.ShouldBe(flag);
        Math.Sign(arc.Turn).ShouldBe(flag ? 1 : -1);
    }

    /// <summary>y grows upwards on paper and downwards in SVG: what lies above stays above.</summary>
    [Fact]
    public void The_picture_is_not_turned_over()
    {
        var file = WrittenSvg.Of(
            Pattern.OfLayoutLines(
                Chain.Line(new(0, 0), new(0, 10)),
                Chain.Line(new(0, 10), new(5, 10))
            ),
            For.Machine
        );
        var lines = file.Runs("layout-lines").SelectMany(run => run).ToArray();
        lines.ShouldAllBe(line => line.End.Y <= line.Start.Y);
        lines.Max(line => line.End.X).ShouldBe(lines.Min(line => line.Start.X) + 5);
        lines.Min(line => line.End.Y).ShouldBe(lines.Max(line => line.Start.Y) - 10);
    }

    /// <summary>SVG 1.1, path data: an arc that ends where it starts draws nothing, so whole circles are circles.</summary>
    [Fact]
    public void A_whole_circle_is_a_circle()
    {
        var file = WrittenSvg.Of(
            Pattern.OfChips(new Circle(new(20, 30), 12.5).ToContour()).Turned(33),
            For.Machine
        );
        file.Paths("chips").ShouldBeEmpty();
        var circle = file.Circles("chips").Single();
        WrittenSvg.Number(circle, "r").ShouldBe(12.5, 1e-6);
        WrittenSvg.Number(circle, "cx").ShouldBe(file.Width / 2, 1e-6);
        WrittenSvg.Number(circle, "cy").ShouldBe(file.Height / 2, 1e-6);
    }

    /// <summary>A half circle over 40 mm rises 20 mm; in one arc a radius off by 0.0005 mm would flatten it by 0.14 mm.</summary>
    [Fact]
    public void A_half_circle_is_two_arcs_that_rise_by_the_radius()
    {
        var bow = new Contour(new Vertex(0, 0, 1), new Vertex(40.000001, 0));
        var arcs = WrittenSvg
            .Of(Pattern.OfChips(bow), For.Machine, SaveOptions.Default.WithDecimals(3))
            .Runs("chips")
            .Single()
            .Where(piece => !piece.IsLine)
            .ToArray();
        arcs.Length.ShouldBe(2);
        var points = arcs.SelectMany(arc => arc.Sample(64)).ToArray();
        (points.Max(point => point.Y) - points.Min(point => point.Y)).ShouldBe(20, 0.001);
    }

    [Theory]
    [InlineData(0.00049, true)]
    [InlineData(0.00051, false)]
    public void Arcs_that_hardly_rise_are_lines(double sagitta, bool isLine)
    {
        var arc = Segment.WithSagitta(new(0, 0), new(60, 0), sagitta);
        WrittenSvg
            .Of(Pattern.OfLayoutLines(Chain.Of(arc)), For.Machine)
            .Runs("layout-lines")
            .Single()
            .Single()
            .IsLine.ShouldBe(isLine);
    }

    /// <summary>An arc over 100 m that rises 0.6 mm has a radius of about 2,083 km.</summary>
    [Fact]
    public void Huge_radii_are_written_as_they_are()
    {
        var arc = Segment.WithSagitta(new(0, 0), new(1e5, 0), 0.6);
        WrittenSvg
            .Of(
                Pattern.OfLayoutLines(Chain.Of(arc)),
                For.Machine,
                SaveOptions.Default.WithDecimals(9)
            )
            .Runs("layout-lines")
            .Single()
            .Single()
            .Radius.ShouldBe(1e5 * 1e5 / 8 / 0.6, 1);
    }

    private static Pattern Board(double width, double height) =>
        Pattern.OfStock(Contour.Rectangle(Point.Origin, new(width, height)));
}
