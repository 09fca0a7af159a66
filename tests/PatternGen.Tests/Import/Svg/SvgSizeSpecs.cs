using System.Globalization;

namespace PatternGen.Tests.Importing.Svg;

/// <summary>True size: units by CSS Values (absolute lengths), the sheet by SVG 1.1, chapter on coordinate systems.</summary>
public sealed class SvgSizeSpecs
{
    private const double Pixel = 25.4 / 96;

    /// <summary>1 in = 2.54 cm = 25.4 mm = 96 px = 72 pt = 6 pc.</summary>
    [Theory]
    [InlineData("100mm", 100)]
    [InlineData("10cm", 100)]
    [InlineData("4in", 101.6)]
    [InlineData("96px", 25.4)]
    [InlineData("96", 25.4)]
    [InlineData("72pt", 25.4)]
    [InlineData("6pc", 25.4)]
    [InlineData(" 7.2e1PT ", 25.4)]
    public void A_sheet_has_the_size_that_it_says(string side, double millimetres)
    {
        var drawing = Svgs.Read(
            $"""<svg xmlns="http://www.w3.org/2000/svg" width="{side}" height="{side}" viewBox="0 0 10 10"><rect width="10" height="10"/></svg>"""
        );
        var extents = drawing.Contours.ShouldHaveSingleItem().Extents;
        extents.Width.ShouldBe(millimetres, 1e-5);
        extents.Height.ShouldBe(millimetres, 1e-5);
        extents.Min.DistanceTo(Point.Origin).ShouldBeLessThan(1e-5);
        drawing.Unit.ShouldBe(millimetres / 10, 1e-6);
        drawing.Notes.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("")]
    [InlineData("""width="100%" height="100%" """)]
    public void Without_a_size_a_unit_is_a_pixel_and_that_is_said(string size)
    {
        var drawing = Svgs.Read(
            $"""<svg {size} viewBox="5 5 96 96"><rect x="5" y="5" width="96" height="96"/></svg>"""
        );
        drawing.Contours.ShouldHaveSingleItem().Extents.Width.ShouldBe(25.4, 1e-5);
        drawing.Unit.ShouldBe(Pixel, 1e-9);
        drawing.Notes.ShouldHaveSingleItem().Kind.ShouldBe(ImportNoteKind.Assumed);
    }

    [Fact]
    public void Without_a_viewBox_a_unit_is_a_pixel()
    {
        var drawing = Svgs.Read(
            """<svg width="192" height="1in"><rect x="0" y="0" width="96" height="50%"/></svg>"""
        );
        var extents = drawing.Contours.ShouldHaveSingleItem().Extents;
        extents.Width.ShouldBe(25.4, 1e-5);
        // Half of an inch, from the upper edge down.
        extents.Min.DistanceTo(new(0, 12.7)).ShouldBeLessThan(1e-5);
        extents.Max.Y.ShouldBe(25.4, 1e-5);
        drawing.Notes.ShouldHaveSingleItem().Kind.ShouldBe(ImportNoteKind.Assumed);
    }

    [Fact]
    public void Half_a_size_is_enough_and_is_said()
    {
        var drawing = Svgs.Read(
            """<svg width="50mm" viewBox="0 0 100 200"><rect width="100" height="200"/></svg>"""
        );
        drawing.Contours.ShouldHaveSingleItem().Extents.Height.ShouldBe(100, 1e-5);
        drawing.Notes.ShouldHaveSingleItem().Kind.ShouldBe(ImportNoteKind.Assumed);
    }

    [Fact]
    public void I_can_say_myself_what_a_unit_is()
    {
        var drawing = Svgs.Read(
            """<svg width="3px" height="7pt" viewBox="1 2 10 20"><rect x="1" y="2" width="10" height="20"/></svg>""",
            ImportSettings.Default.WithUnit(25.4)
        );
        var extents = drawing.Contours.ShouldHaveSingleItem().Extents;
        extents.Min.DistanceTo(Point.Origin).ShouldBeLessThan(1e-4);
        extents.Max.DistanceTo(new(254, 508)).ShouldBeLessThan(1e-4);
        drawing.Unit.ShouldBe(25.4);
    }

    /// <summary>
    /// preserveAspectRatio: a viewBox of 10 × 10 in a sheet of 40 × 20. Meeting, a unit is 2 and 20 mm of width are free; slicing,
    /// it is 4 and 20 mm of height hang over; the first half of the word says to which side.
    /// </summary>
    [Theory]
    [InlineData("", 10, 0, 30, 20)]
    [InlineData("xMidYMid meet", 10, 0, 30, 20)]
    [InlineData("xMinYMax", 0, 0, 20, 20)]
    [InlineData("xMaxYMin meet", 20, 0, 40, 20)]
    [InlineData("none", 0, 0, 40, 20)]
    [InlineData("xMidYMid slice", 0, -10, 40, 30)]
    [InlineData("xMidYMin slice", 0, -20, 40, 20)]
    [InlineData("xMidYMax slice", 0, 0, 40, 40)]
    public void Proportions_are_kept_as_asked(
        string aspect,
        double left,
        double low,
        double right,
        double high
    )
    {
        var attribute = aspect.Length > 0 ? $"preserveAspectRatio=\"{aspect}\"" : "";
        var extents = Svgs.Read(
                $"""<svg width="40mm" height="20mm" viewBox="0 0 10 10" {attribute}><rect width="10" height="10"/></svg>"""
            )
            .Contours.ShouldHaveSingleItem()
            .Extents;
        extents.Min.DistanceTo(new(left, low)).ShouldBeLessThan(1e-5);
        extents.Max.DistanceTo(new(right, high)).ShouldBeLessThan(1e-5);
    }

    [Theory]
    [InlineData("0mm")]
    [InlineData("-5mm")]
    [InlineData("wide")]
    [InlineData("1e400mm")]
    [InlineData("NaN")]
    public void A_sheet_without_a_size_is_refused(string width) =>
        Should
            .Throw<ImportException>(() =>
                Svgs.Read($"""<svg width="{width}" height="9mm" viewBox="0 0 1 1"/>""")
            )
            .Remedies.ShouldNotBeEmpty();

    /// <summary>Decimal commas are none of SVG's, and a reader's language must not make them so.</summary>
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_language_of_the_system_is_no_matter(string name)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
            var drawing = Svgs.Path("M1.5,2.5 10,20.25 -3.125 7z");
            drawing.Contours.ShouldHaveSingleItem().Extents.Max.X.ShouldBe(10, 1e-5);
            drawing.Contours[0].Extents.Min.X.ShouldBe(-3.125, 1e-5);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
