namespace PatternGen.Tests.Importing.Svg;

/// <summary>Transforms by SVG 1.1, chapter on coordinate systems.</summary>
public sealed class SvgTransformSpecs
{
    private const double Rounding = 1e-4;

    /// <summary>Where (10, 0) and (0, 10) go, from the matrices printed there.</summary>
    [Theory]
    [InlineData("translate(5)", 15, 0, 5, 10)]
    [InlineData("translate(5,7)", 15, 7, 5, 17)]
    [InlineData("scale(2)", 20, 0, 0, 20)]
    [InlineData("scale(2 3)", 20, 0, 0, 30)]
    [InlineData("rotate(90)", 0, 10, -10, 0)]
    [InlineData("rotate(-90 10 10)", 0, 10, 10, 20)]
    [InlineData("skewX(45)", 10, 0, 10, 10)]
    [InlineData("skewY(45)", 10, 10, 0, 10)]
    [InlineData("matrix(1 2 3 4 5 6)", 15, 26, 35, 46)]
    [InlineData("translate(100 0) , rotate(90)\n scale(2,1)", 100, 20, 90, 0)]
    [InlineData("matrix(1e0-2.5.5 4 5 6)", 15, -19, 10, 46)]
    [InlineData("none", 10, 0, 0, 10)]
    public void Transforms_take_points_where_they_should(
        string transform,
        double x1,
        double y1,
        double x2,
        double y2
    )
    {
        var line = Svgs.Read(
                Svgs.Sheet($"""<line transform="{transform}" x1="10" y1="0" x2="0" y2="10"/>""")
            )
            .Chains.ShouldHaveSingleItem();
        line.Start.DistanceTo(Svgs.At(x1, y1)).ShouldBeLessThan(Rounding);
        line.End.DistanceTo(Svgs.At(x2, y2)).ShouldBeLessThan(Rounding);
    }

    [Theory]
    [InlineData("rotate(30)")]
    [InlineData("scale(-2 2)")]
    [InlineData("matrix(0.866025 0.5 -0.5 0.866025 10 10)")]
    [InlineData("scale(3,1) scale(1,3)")]
    [InlineData("rotate(45 100 100) translate(3 4) scale(.5)")]
    public void A_circle_stays_one_where_nothing_stretches_it(string transform)
    {
        var circle = Svgs.Read(
                Svgs.Sheet(
                    $"""<g transform="translate(300 300)"><circle transform="{transform}" r="20"/></g>"""
                )
            )
            .Contours.ShouldHaveSingleItem();
        circle.Count.ShouldBe(2);
        circle.Segments.ShouldAllBe(half => Math.Abs(Math.Abs(half.Bulge) - 1) < 1e-4);
    }

    /// <summary>An area grows by the determinant: of scale(2, 0.5) skewX(30) it is 1.</summary>
    [Fact]
    public void A_stretched_circle_is_an_ellipse()
    {
        var drawing = Svgs.Read(
            Svgs.Sheet("""<circle transform="translate(300 300) scale(2 .5) skewX(30)" r="20"/>"""),
            ImportSettings.Default.WithAccuracy(0.001)
        );
        var ellipse = drawing.Contours.ShouldHaveSingleItem();
        ellipse.Count.ShouldBeGreaterThan(8);
        ellipse.Area.ShouldBe(Math.PI * 400, ellipse.Length * drawing.Accuracy);
        drawing.Notes.ShouldHaveSingleItem().What.ShouldBe("ellipse drawn with arcs");
    }

    /// <summary>The mirror image of a quarter circle bulges to the other side.</summary>
    [Theory]
    [InlineData("scale(1 1)", -1)]
    [InlineData("scale(-1 1)", 1)]
    [InlineData("scale(1 -1)", 1)]
    [InlineData("scale(-1 -1)", -1)]
    public void Mirroring_turns_the_sense_of_arcs(string transform, int sense)
    {
        var arc = Svgs.Read(
                Svgs.Sheet($"""<path transform="{transform}" d="M10 0A10 10 0 0 1 0 10"/>""")
            )
            .Chains.ShouldHaveSingleItem()
            .Segments.ShouldHaveSingleItem();
        arc.Bulge.ShouldBe(sense * Math.Tan(Math.PI / 8), 1e-5);
    }

    [Theory]
    [InlineData("turn(30)")]
    [InlineData("rotate(30")]
    [InlineData("rotate 30)")]
    [InlineData("rotate(1 2)")]
    [InlineData("matrix(1 2 3)")]
    [InlineData("translate(1 2 3)")]
    [InlineData("scale(NaN)")]
    [InlineData("scale(1e400)")]
    [InlineData("matrix(1 0 0 1 0 0 0)")]
    public void A_transform_without_sense_is_refused_with_its_line(string transform)
    {
        var error = Should.Throw<ImportException>(() =>
            Svgs.Read(Svgs.Sheet($"""{"\n"}<g transform="{transform}"/>"""))
        );
        error.Where.ShouldBe("line 2");
        error.Remedies.ShouldNotBeEmpty();
    }
}
