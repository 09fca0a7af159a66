namespace PatternGen.Tests.Output.Svg;

public class ApprovedSvgTests
{
    [Fact]
    public void A_petal_and_a_triangle_to_look_at() =>
        Approved.Matches("look.svg", WrittenSvg.Of(Drawing(), For.Viewing).Text);

    [Fact]
    public void A_petal_and_a_triangle_for_a_machine() =>
        Approved.Matches("machine.svg", WrittenSvg.Of(Drawing(), For.Machine).Text);

    private static Pattern Drawing() =>
        Pattern
            .Combine(
                Pattern.OfStock(Contour.Rectangle(Point.Origin, new(40, 20))),
                Pattern.OfLayoutLines(Chain.Line(new(0, 10), new(40, 10))),
                Pattern.OfChips(Samples.Lens(16, 0.25)).Moved(2, 10),
                Pattern.OfChips(Contour.Polygon(new(22, 10), new(30, 10), new(26, 14)))
            )
            .Named("Petal and triangle");
}
