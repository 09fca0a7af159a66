namespace PatternGen.Tests.Importing.Svg;

/// <summary>Groups, references, sheets in sheets, hidden things and layers.</summary>
public sealed class SvgStructureSpecs
{
    private const double Rounding = 1e-4;
    private const string Square = """<rect width="10" height="10"/>""";

    [Theory]
    [InlineData("href")]
    [InlineData("xlink:href")]
    public void A_use_draws_what_it_refers_to_where_it_says(string href)
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                $"""<defs><rect id="a b" width="10" height="10" transform="translate(1 1)"/></defs><use {href}="#a b" x="20" y="30" transform="scale(2)"/>"""
            )
        );
        // Scaled around everything: 2 · (20 + 1), 2 · (30 + 1).
        var extents = drawing.Contours.ShouldHaveSingleItem().Extents;
        extents.Min.DistanceTo(Svgs.At(42, 82)).ShouldBeLessThan(Rounding);
        extents.Max.DistanceTo(Svgs.At(62, 62)).ShouldBeLessThan(Rounding);
    }

    [Fact]
    public void A_use_can_come_before_what_it_refers_to_and_use_others()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                $"""<use href="#pair"/><defs><g id="pair"><use href="#one"/><use href="#one" x="20"/></g><g id="one">{Square}</g></defs>"""
            )
        );
        drawing.Contours.Count.ShouldBe(2);
    }

    /// <summary>A symbol of 10 × 10 shown 40 wide and 20 high: a unit is 2, and 10 units of width are free on each side.</summary>
    [Fact]
    public void A_symbol_fits_into_the_size_of_its_use()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                $"""<symbol id="s" viewBox="0 0 10 10">{Square}</symbol><use href="#s" x="100" y="200" width="40" height="20"/>"""
            )
        );
        var extents = drawing.Contours.ShouldHaveSingleItem().Extents;
        extents.Min.DistanceTo(Svgs.At(110, 220)).ShouldBeLessThan(Rounding);
        extents.Max.DistanceTo(Svgs.At(130, 200)).ShouldBeLessThan(Rounding);
    }

    [Fact]
    public void A_sheet_can_lie_in_a_sheet()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                $"""<svg x="10" y="20" width="50%" height="100" viewBox="5 5 50 10">{Square}</svg>"""
            )
        );
        // 500 × 100 mm for 50 × 10: a unit is 10, and the corner of the box, (5, 5), lies at (10, 20).
        var extents = drawing.Contours.ShouldHaveSingleItem().Extents;
        extents.Min.DistanceTo(Svgs.At(-40, 70)).ShouldBeLessThan(Rounding);
        extents.Width.ShouldBe(100, Rounding);
    }

    [Theory]
    [InlineData("""<g display="none">{0}</g>""")]
    [InlineData("""<g style="fill:red; display : none">{0}</g>""")]
    [InlineData("""<g style="display:inline;display:none!important">{0}</g>""")]
    [InlineData("""<g visibility="hidden"><g>{0}</g></g>""")]
    [InlineData("""<g style="visibility:collapse">{0}</g>""")]
    [InlineData(
        """<style>@page{{size:1mm}} .st0, .st1{{fill:none;display:none}}</style><g class="x st1">{0}</g>"""
    )]
    [InlineData(
        """<style type="text/css"><![CDATA[#off{{visibility:hidden}}]]></style><g id="off">{0}</g>"""
    )]
    public void What_is_hidden_is_not_read_but_told(string wrapping)
    {
        var content = string.Format(
            System.Globalization.CultureInfo.InvariantCulture,
            wrapping,
            Square
        );
        var drawing = Svgs.Read(Svgs.Sheet(content));
        drawing.Contours.ShouldBeEmpty();
        drawing.Notes.ShouldHaveSingleItem().What.ShouldBe("hidden element");
    }

    [Fact]
    public void What_is_hidden_can_hold_what_is_seen()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet($"""<g visibility="hidden"><g visibility="visible">{Square}</g></g>""")
        );
        drawing.Contours.Count.ShouldBe(1);
    }

    [Fact]
    public void Definitions_are_not_drawn_by_themselves()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                $"""<defs>{Square}<text>x</text></defs><symbol>{Square}</symbol><clipPath>{Square}</clipPath><marker>{Square}</marker><mask>{Square}</mask><pattern>{Square}</pattern>"""
            )
        );
        drawing.Contours.ShouldBeEmpty();
        drawing.Notes.ShouldBeEmpty();
    }

    [Fact]
    public void What_can_not_be_lines_is_told_with_its_number_and_first_place()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                """
                <text x="1">Lid <tspan>no. 7</tspan></text>
                <image href="wood.png" width="9" height="9"/><text/>
                <linearGradient id="g"><stop/></linearGradient>
                <foreignObject><body xmlns="http://www.w3.org/1999/xhtml"><p>x</p></body></foreignObject>
                <script>alert(1)</script><blink/><x:note xmlns:x="urn:x"><path xmlns="http://www.w3.org/2000/svg" d="M0 0h9"/></x:note>
                <rect width="9" height="9" clip-path="url(#c)"/>
                """
            )
        );
        drawing.Contours.Count.ShouldBe(1);
        drawing
            .Notes.Select(note => note.ToString())
            .Order(StringComparer.Ordinal)
            .ShouldBe([
                "Changed: clipped element read whole, at line 6",
                "Skipped: element unknown to SVG, at line 5",
                "Skipped: foreignObject, at line 4",
                "Skipped: image, at line 2",
                "Skipped: linearGradient, at line 3",
                "Skipped: script, at line 5",
                "Skipped: text, 2 times, first at line 1",
            ]);
    }

    [Theory]
    [InlineData("cut")]
    [InlineData("CUT")]
    [InlineData("Outer edge")]
    [InlineData("to be cut")]
    public void I_can_read_one_layer_by_its_name_label_or_title(string layer)
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                $"""<g id="notes">{Square}</g><g id="cut" aria-label="to be cut"><title>Outer edge</title><g><circle r="5"/></g></g>"""
            ),
            ImportSettings.Default.WithLayers(layer)
        );
        drawing.Contours.ShouldHaveSingleItem().Area.ShouldBe(Math.PI * 25, 0.01);
    }

    [Fact]
    public void A_layer_that_is_not_there_is_an_error_that_names_those_that_are()
    {
        var error = Should.Throw<ImportException>(() =>
            Svgs.Read(
                Svgs.Sheet("""<g id="notes"/><g id="cut"/>"""),
                ImportSettings.Default.WithLayers("cut", "burn")
            )
        );
        error.Message.ShouldContain("burn");
        error.Remedies.ShouldHaveSingleItem().ShouldContain("notes, cut");
    }

    [Fact]
    public void Of_two_elements_with_one_name_the_first_counts()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet(
                $"""<defs><circle id="a" r="5"/><g id="a">{Square}</g></defs><use href="#a"/>"""
            )
        );
        drawing.Contours.ShouldHaveSingleItem().Count.ShouldBe(2);
    }

    [Theory]
    [InlineData("other.svg#a")]
    [InlineData("http://127.0.0.1:9/x.svg#a")]
    [InlineData("file:///etc/passwd#a")]
    [InlineData("#missing")]
    [InlineData("")]
    public void A_use_of_something_elsewhere_is_told_and_left_out(string href)
    {
        var drawing = Svgs.Read(Svgs.Sheet($"""<g id="a">{Square}</g><use href="{href}"/>"""));
        drawing.Contours.Count.ShouldBe(1);
        drawing
            .Notes.ShouldHaveSingleItem()
            .What.ShouldBe("use of something that is not in the file");
    }
}
