using PatternGen.Tests.Importing.Dxf;
using PatternGen.Tests.Output;

namespace PatternGen.Tests.Importing;

public sealed class ImportedDrawingSpecs
{
    /// <summary>A lid of 120 × 80 mm, corners rounded by 10, with a hole of radius 5.</summary>
    private static readonly string Lid = DxfFile.Of(
        "0 LINE 10 10 20 0 11 110 21 0",
        "0 ARC 10 110 20 10 40 10 50 270 51 0",
        "0 LINE 10 120 20 10 11 120 21 70",
        "0 ARC 10 110 20 70 40 10 50 0 51 90",
        "0 LINE 10 110 20 80 11 10 21 80",
        "0 ARC 10 10 20 70 40 10 50 90 51 180",
        "0 LINE 10 0 20 70 11 0 21 10",
        "0 ARC 10 10 20 10 40 10 50 180 51 270",
        "0 CIRCLE 10 60 20 40 40 5"
    );

    private const double LidArea = 120 * 80 - (4 - Math.PI) * 100;

    [Fact]
    public void An_outline_can_be_inset_for_a_line_inside_the_edge()
    {
        using var folder = new TemporaryFolder();
        var path = folder.File("lid.dxf");
        File.WriteAllText(path, Lid);

        var line = Import.Outline(path).Inset(8).Largest();

        line.Area.ShouldBe(104 * 64 - (4 - Math.PI) * 4, 1e-6);
    }

    [Fact]
    public void A_ring_in_a_ring_is_a_hole()
    {
        var outline = DxfFile.Import(Lid).Outline();

        outline.Area.ShouldBe(LidArea - 25 * Math.PI, 1e-9);
        outline.Parts.ShouldHaveSingleItem().Holes.ShouldHaveSingleItem();
    }

    [Fact]
    public void A_drawing_can_be_chips_or_stock_or_layout_lines()
    {
        var drawing = DxfFile.Import(Lid);

        drawing.AsChips().Chips.ShouldHaveSingleItem().Holes.ShouldHaveSingleItem();
        drawing.AsStock().Stock.Sum(ring => ring.SignedArea).ShouldBe(LidArea - 25 * Math.PI, 1e-9);
        drawing
            .AsLayoutLines()
            .LayoutLines.Sum(line => line.Length)
            .ShouldBe(2 * (100 + 60) + 20 * Math.PI + 10 * Math.PI, 1e-9);
    }

    [Fact]
    public void The_areas_between_the_lines_of_a_drawing_can_be_carved()
    {
        // Two circles through each other's centre: a lens between two crescents.
        var drawing = DxfFile.Import(
            DxfFile.Of("0 CIRCLE 10 0 20 0 40 10", "0 CIRCLE 10 10 20 0 40 10")
        );

        var figure = drawing.Figure();

        figure.Curves.ShouldAllBe(curve => curve.IsCircle);
        figure.Parts.Count.ShouldBe(3);
        figure.OrbitCount.ShouldBe(2);
        // (2π/3 - √3/2) R², the vesica.
        var lens = figure.PartAt(new(5, 0)).ShouldNotBeNull();
        lens.Area.ShouldBe((2 * Math.PI / 3 - Math.Sqrt(3) / 2) * 100, 1e-9);
        figure.Carve(part => part.Orbit != lens.Orbit).Chips.Count().ShouldBe(2);
        figure.CarveAt(new Point(5, 0)).Chips.ShouldHaveSingleItem();
    }

    [Fact]
    public void Lines_that_only_cross_have_areas_between_them_too()
    {
        var drawing = DxfFile.Import(
            DxfFile.Of(
                DxfFile.Line(-1, 0, 11, 0),
                DxfFile.Line(-1, 5, 11, 5),
                DxfFile.Line(0, -1, 0, 6),
                DxfFile.Line(10, -1, 10, 6)
            )
        );

        drawing.Figure().Parts.ShouldHaveSingleItem().Area.ShouldBe(50, 1e-9);
        Should
            .Throw<PatternException>(() => drawing.Outline())
            .Remedies.ShouldContain(remedy => remedy.StartsWith("Figure"));
    }

    /// <summary>A square of 50 with a gap at each corner, and a line far away that has nothing to do with it.</summary>
    [Fact]
    public void An_outline_with_gaps_says_where_they_are_and_what_closes_it()
    {
        var text = DxfFile.Of(
            DxfFile.Line(0, 0, 49.9, 0),
            DxfFile.Line(50, 0, 50, 49.8),
            DxfFile.Line(50, 50, 0.3, 50),
            DxfFile.Line(0, 50, 0, 0.4),
            DxfFile.Line(500, 500, 600, 600)
        );

        var error = Should.Throw<PatternException>(() => DxfFile.Import(text).Outline());

        error.Message.ShouldContain("0.1 mm from (49.9, 0) to (50, 0)");
        error.Message.ShouldContain("0.4 mm from (0, 0) to (0, 0.4)");
        error.Message.ShouldContain("and 1 more");
        error.Remedies[0].ShouldBe("ImportSettings.Default.WithJoinWithin(0.4)");
        DxfFile
            .Import(text, ImportSettings.Default.WithJoinWithin(0.4))
            .Outline()
            .Area.ShouldBe(2500, 0.4 * 200);
        Should.Throw<PatternException>(() =>
            DxfFile.Import(text, ImportSettings.Default.WithJoinWithin(0.39)).Outline()
        );
    }

    [Fact]
    public void Gaps_too_wide_to_join_are_told_without_a_setting()
    {
        var error = Should.Throw<PatternException>(() =>
            DxfFile
                .Import(DxfFile.Of(DxfFile.Line(0, 0, 100, 0), DxfFile.Line(100, 50, 0, 50)))
                .Outline()
        );

        error.Message.ShouldContain("50 mm from (100, 0) to (100, 50)");
        error.Remedies.ShouldNotContain(remedy => remedy.Contains("WithJoinWithin"));
    }

    [Fact]
    public void A_figure_from_a_file_has_no_steps_and_says_so()
    {
        var figure = DxfFile.Import(Lid).Figure();

        figure.Instructions.ShouldBeEmpty();
        Should
            .Throw<PatternException>(() => figure.Steps())
            .Message.ShouldContain("no steps to draw it");
    }

    [Fact]
    public void A_drawing_with_nothing_to_read_says_what_was_skipped()
    {
        var drawing = DxfFile.Import(DxfFile.Of("0 POINT 10 0 20 0", "0 POINT 10 1 20 0"));

        drawing.Extents.ShouldBeNull();
        foreach (
            var use in new Action[]
            {
                () => drawing.Outline(),
                () => drawing.Figure(),
                () => drawing.AsChips(),
            }
        )
            Should
                .Throw<PatternException>(use)
                .Message.ShouldContain("Skipped: point, 2 times, first at line 16");
    }

    [Theory]
    [InlineData("lid", false)]
    [InlineData("lid.txt", false)]
    [InlineData("LID.DXF", false)]
    [InlineData("lid.dat", true)]
    public void A_file_is_known_by_its_name_or_else_its_content(string name, bool withMark)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(
            folder.File(name),
            Lid,
            new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: withMark)
        );

        Import.Drawing(folder.File(name)).Contours.Count.ShouldBe(2);
    }

    [Theory]
    [InlineData("")]
    [InlineData("A letter about a lid.")]
    [InlineData("\0\u0001\u0002")]
    public void A_file_that_is_neither_is_refused(string content)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("lid"), content);

        Should
            .Throw<ImportException>(() => Import.Drawing(folder.File("lid")))
            .Message.ShouldContain("neither SVG nor DXF");
    }

    [Fact]
    public void A_file_is_free_again_and_a_stream_stays_open()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("lid.dxf"), Lid);
        Import.Drawing(folder.File("lid.dxf"));
        File.Delete(folder.File("lid.dxf"));

        using var stream = new MemoryStream(System.Text.Encoding.ASCII.GetBytes(Lid));
        Import.Outline(stream, FileFormat.Dxf);
        stream.CanRead.ShouldBeTrue();
    }

    [Fact]
    public async Task A_drawing_can_be_read_without_holding_me_up()
    {
        using var folder = new TemporaryFolder();
        await File.WriteAllTextAsync(folder.File("lid.dxf"), Lid, Token);

        (
            await Import.DrawingAsync(folder.File("lid.dxf"), cancellation: Token)
        ).Contours.Count.ShouldBe(2);
        using var stream = new MemoryStream(System.Text.Encoding.ASCII.GetBytes(Lid));
        (
            await Import.DrawingAsync(stream, FileFormat.Dxf, cancellation: Token)
        ).Contours.Count.ShouldBe(2);
        using var stopped = new CancellationTokenSource();
        await stopped.CancelAsync();
        await Should.ThrowAsync<OperationCanceledException>(() =>
            Import.DrawingAsync(folder.File("lid.dxf"), cancellation: stopped.Token)
        );
    }

    [Theory]
    [InlineData(FileFormat.Dxf)]
    [InlineData(FileFormat.Svg)]
    public async Task I_can_stop_a_drawing_whose_file_is_read_already(FileFormat format)
    {
        using var stopping = new CancellationTokenSource();
        using var file = new StoppingStream(
            System.Text.Encoding.ASCII.GetBytes(
                format == FileFormat.Dxf ? Lid : Svg.Svgs.Sheet("<circle r='5'/>")
            ),
            stopping
        );

        await Should.ThrowAsync<OperationCanceledException>(() =>
            Import.DrawingAsync(file, format, cancellation: stopping.Token)
        );
    }

    /// <summary>Asks to stop when it has been read to its end.</summary>
    private sealed class StoppingStream(byte[] bytes, CancellationTokenSource stopping)
        : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = base.Read(buffer, offset, count);
            if (Position == Length)
                stopping.Cancel();
            return read;
        }
    }

    [Fact]
    public void A_file_that_is_not_there_is_the_systems_error()
    {
        Should.Throw<FileNotFoundException>(() => Import.Drawing("no-such-lid.dxf"));
        Should.Throw<ArgumentException>(() => Import.Drawing(" "));
        Should.Throw<ArgumentNullException>(() => Import.Drawing(null!, FileFormat.Dxf));
        Should.Throw<ArgumentOutOfRangeException>(() => Import.Drawing(Stream.Null, (FileFormat)9));
    }

    private static CancellationToken Token => TestContext.Current.CancellationToken;
}
