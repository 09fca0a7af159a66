namespace PatternGen.Tests.Importing.Svg;

/// <summary>Styles as drawing programs write them: what they hide is not read, and what they change besides is told.</summary>
public sealed class SvgStyleSpecs
{
    [Theory]
    [InlineData("<style>/* not { shown } */ .a { display : none }</style>")]
    [InlineData(
        "<style><![CDATA[/* a *//* b */.b,\n.a{fill:none;display:none!important}]]></style>"
    )]
    [InlineData("<defs><style type='text/css'>circle{visibility:hidden}</style></defs>")]
    [InlineData("<style>.a{display:none}/* never closed</style>")]
    public void What_a_style_sheet_hides_is_not_read(string sheet)
    {
        var drawing = Svgs.Read(Svgs.Sheet($"{sheet}<circle class='a' r='5'/>"));

        drawing.Contours.ShouldBeEmpty();
        drawing.Notes.ShouldHaveSingleItem().What.ShouldBe("hidden element");
    }

    [Theory]
    [InlineData("<circle r='5' style='fill:none;transform:scale(2)'/>", "transform in a style")]
    [InlineData("<style>.a{r:9px}</style><circle class='a' r='5'/>", "r in a style")]
    [InlineData("<circle r='5' style='clip-path:url(#c)'/>", "clipped element")]
    [InlineData("<circle r='5' mask='url(#c)'/>", "clipped element")]
    [InlineData("<style>.b .a{display:none}</style><circle class='a' r='5'/>", "style sheet")]
    [InlineData("<circle class='a' r='5'/><style>.a{display:none}</style>", "style sheet")]
    public void What_a_style_would_change_besides_is_told(string content, string what)
    {
        var drawing = Svgs.Read(Svgs.Sheet(content));

        drawing.Contours.ShouldHaveSingleItem().Area.ShouldBe(25 * Math.PI, 1e-2);
        drawing.Notes.ShouldHaveSingleItem().What.ShouldContain(what);
    }

    [Theory]
    [InlineData("fill:none;stroke:#000;stroke-width:.26;opacity:1")]
    [InlineData("display:inline;transform:none;clip-path:none;width:auto")]
    [InlineData("enable-background:new 0 0 10 10;")]
    [InlineData("garbage;:;a:")]
    public void Styles_that_change_no_line_are_passed_over(string style) =>
        Svgs.Read(Svgs.Sheet($"<circle r='5' style='{style}'/>")).Notes.ShouldBeEmpty();

    [Fact]
    public void A_layer_is_known_by_the_label_that_a_drawing_program_gives_it()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                """<g xmlns:x="urn:x" x:label="Cut &amp; carve" id="layer1"><circle r="5"/></g><circle r="7"/>"""
            ),
            ImportSettings.Default.WithLayers("cut & carve")
        );

        drawing.Contours.ShouldHaveSingleItem().Area.ShouldBe(25 * Math.PI, 1e-2);
    }
}
