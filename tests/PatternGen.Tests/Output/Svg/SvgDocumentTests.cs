using global::Svg;

namespace PatternGen.Tests.Output.Svg;

public class SvgDocumentTests
{
    [Fact]
    public void The_document_holds_what_the_file_holds()
    {
        var document = Samples.Board().ToSvgDocument(For.Machine);
        document.Width.Type.ShouldBe(SvgUnitType.Millimeter);
        document.Width.Value.ShouldBe(132);
        document.ViewBox.Width.ShouldBe(132);
        var chips = document.GetElementById("chips").ShouldBeOfType<SvgGroup>();
        chips.Children.OfType<SvgPath>().Count().ShouldBe(3);
        chips.Children.OfType<SvgCircle>().Count().ShouldBe(3);
    }

    [Fact]
    public void The_document_is_for_viewing_unless_asked_otherwise() =>
        Samples.Board().ToSvgDocument().GetElementById("walls").ShouldNotBeNull();
}
