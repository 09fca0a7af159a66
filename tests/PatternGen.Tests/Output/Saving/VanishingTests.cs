using PatternGen.Tests.Output.Dxf;
using PatternGen.Tests.Output.Svg;

namespace PatternGen.Tests.Output.Saving;

public class VanishingTests
{
    private static readonly Contour Square = Contour.Rectangle(new(0, 0), new(2, 2));
    private static readonly Contour Speck = Contour.Rectangle(new(2, 0), new(2 + 1e-8, 1e-8));

    public static TheoryData<FileFormat, SharedSides> Ways =>
        new MatrixTheoryData<FileFormat, SharedSides>(
            Enum.GetValues<FileFormat>(),
            Enum.GetValues<SharedSides>()
        );

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_chip_of_which_nothing_is_left_is_refused_every_way(
        FileFormat format,
        SharedSides sides
    )
    {
        var error = Should.Throw<PatternException>(() =>
            Save(Pattern.OfChips(Square, Speck), format, sides)
        );

        error.Place.ShouldBe(new Point(2, 0));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_hole_of_which_nothing_is_left_is_refused_every_way(
        FileFormat format,
        SharedSides sides
    )
    {
        var speck = Speck.Transformed(Transform.Move(-1, 1));

        var error = Should.Throw<PatternException>(() =>
            Save(Pattern.OfChips(new Region(Square, speck).Parts), format, sides)
        );

        error.Place.ShouldBe(new Point(1, 1));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Lines_of_which_nothing_is_left_are_left_out_and_counted(
        FileFormat format,
        SharedSides sides
    )
    {
        var result = Save(SpecksAndLines(), format, sides);

        result.LeftOut.ShouldBe(3);
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void A_dxf_without_specks_is_clean(DxfVersion version)
    {
        // The lint compares handles with their seed, which follows from the number of entities announced.
        var file = DxfSamples.Write(SpecksAndLines(), SaveOptions.Default.WithDxfVersion(version));

        DxfLint.Check(file).ShouldBeEmpty();
        DxfDocument.Parse(file).Shapes.Count.ShouldBe(3);
    }

    [Theory]
    [InlineData(For.Viewing)]
    [InlineData(For.Paper)]
    [InlineData(For.Machine)]
    public void An_svg_has_a_path_for_each_line_that_is_no_speck(For purpose)
    {
        var svg = WrittenSvg.Of(SpecksAndLines(), purpose);

        svg.Paths("layout-lines").Count().ShouldBe(1);
        svg.Paths("line-cuts").Count().ShouldBe(1);
    }

    [Fact]
    public void What_is_long_enough_with_more_decimals_is_drawn_there()
    {
        var line = Pattern.OfLayoutLines(Chain.Line(new(0, 0), new(1e-7, 0)));

        Save(line, SaveOptions.Default).LeftOut.ShouldBe(1);
        Save(line, SaveOptions.Default.WithDecimals(9)).LeftOut.ShouldBe(0);
    }

    [Theory]
    [InlineData(FileFormat.Svg)]
    [InlineData(FileFormat.Dxf)]
    public void A_line_out_and_straight_back_is_drawn_as_one(FileFormat format)
    {
        // Arcs of 10 mm that rise 0.00005 mm are lines.
        var flat = new Chain([new(0, 0, 1e-5), new(10, 0, 1e-5), new(0, 0)]);
        var pattern = Pattern.OfLayoutLines(flat);

        if (format == FileFormat.Dxf)
            DxfSamples.Read(pattern).Shapes.ShouldHaveSingleItem().IsClosed.ShouldBeFalse();
        else
            WrittenSvg.Of(pattern, For.Machine).Runs("layout-lines").ShouldHaveSingleItem();
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_chip_too_flat_for_its_arcs_is_refused_with_what_helps(
        FileFormat format,
        SharedSides sides
    )
    {
        var lens = new Contour(new Vertex(0, 0, 1e-5), new Vertex(10, 0, 1e-5));

        var error = Should.Throw<PatternException>(() =>
            Save(Pattern.OfChips(lens), format, sides, decimals: 9)
        );

        error.Message.ShouldContain("0.0005 mm");
        error.Remedies.ShouldNotContain(remedy => remedy.Contains("decimals"));
    }

    [Theory]
    [InlineData(6, true)]
    [InlineData(9, false)]
    public void More_decimals_are_only_offered_where_they_help(int decimals, bool helps)
    {
        var size = helps ? 1e-7 : 1e-11;
        var chip = Contour.Rectangle(new(0, 0), new(size, size));

        var error = Should.Throw<PatternException>(() =>
            Save(Pattern.OfChips(chip), SaveOptions.Default.WithDecimals(decimals))
        );

        error.Remedies.Any(remedy => remedy.Contains("decimals")).ShouldBe(helps);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void A_circle_is_one_in_both_formats_in_however_many_arcs(int arcs)
    {
        // Corners on a circle of radius 3 about (4, 5); the bulge of an n-th of it is tan(360° / 4n).
        var bulge = Math.Tan(Math.Tau / arcs / 4);
        var circle = new Contour([
            .. Enumerable
                .Range(0, arcs)
                .Select(i => Math.SinCos(0.3 + i * Math.Tau / arcs))
                .Select(turn => new Vertex(4 + 3 * turn.Cos, 5 + 3 * turn.Sin, bulge)),
        ]);
        var pattern = Pattern.OfChips(circle);

        DxfSamples.Read(pattern).Shapes.ShouldHaveSingleItem().Record.Type.ShouldBe("CIRCLE");
        var drawn = WrittenSvg.Of(pattern, For.Machine).Circles("chips").ShouldHaveSingleItem();
        WrittenSvg.Number(drawn, "r").ShouldBe(3, 1e-6);
    }

    /// <summary>A layout line, a line cut and a square that are seen, and three lines that are not.</summary>
    private static Pattern SpecksAndLines() =>
        Pattern
            .OfLayoutLines(
                Chain.Line(new(0, 0), new(1e-8, 0)),
                Chain.Line(new(0, 5), new(10, 5)),
                new Chain([new(3, 3), new(3 + 1e-8, 3), new(3, 3 + 1e-8), new(3, 3)])
            )
            .With(
                Pattern.OfLineCuts(
                    new LineCut(Chain.Line(new(0, 6), new(10, 6)), 1),
                    new LineCut(Chain.Line(new(0, 7), new(1e-7, 7)), 1)
                )
            )
            .With(Pattern.OfChips(Square));

    private static SaveResult Save(
        Pattern pattern,
        FileFormat format,
        SharedSides sides,
        int decimals = 6
    ) =>
        pattern.Save(
            Stream.Null,
            format,
            For.Machine,
            SaveOptions.Default.WithSharedSides(sides).WithDecimals(decimals)
        );

    private static SaveResult Save(Pattern pattern, SaveOptions options) =>
        pattern.Save(Stream.Null, FileFormat.Dxf, For.Machine, options);
}
