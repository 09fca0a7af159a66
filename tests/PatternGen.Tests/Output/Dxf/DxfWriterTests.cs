using System.Globalization;

namespace PatternGen.Tests.Output.Dxf;

public class DxfWriterTests
{
    private static readonly SaveOptions R12 = SaveOptions.Default.WithDxfVersion(DxfVersion.R12);

    public static TheoryData<DxfVersion, SharedSides> Ways =>
        new()
        {
            { DxfVersion.R2000, SharedSides.Closed },
            { DxfVersion.R2000, SharedSides.Once },
            { DxfVersion.R12, SharedSides.Closed },
            { DxfVersion.R12, SharedSides.Once },
        };

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_file_of_everything_is_clean(DxfVersion version, SharedSides sides)
    {
        var options = SaveOptions.Default.WithDxfVersion(version).WithSharedSides(sides);

        var file = DxfSamples.Write(DxfSamples.Everything(), options);

        DxfLint.Check(file, mayShareSides: sides == SharedSides.Closed).ShouldBeEmpty();
    }

    [Theory]
    [InlineData(3)]
    [InlineData(9)]
    public void A_file_is_clean_with_few_and_with_many_decimals(int decimals)
    {
        var options = SaveOptions.Default.WithDecimals(decimals);
        var turned = DxfSamples.Everything().Turned(17).Moved(1000.0 / 3, 0);

        DxfLint
            .Check(DxfSamples.Write(turned, options), mayShareSides: true)
            .Where(finding =>
                decimals > 3 || !finding.StartsWith("header: $EXT", StringComparison.Ordinal)
            )
            .ShouldBeEmpty();
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Chips_come_back_as_they_were_drawn(DxfVersion version)
    {
        var pattern = Pattern
            .OfChips(DxfSamples.Triangle)
            .Repeated(7, 8.0275)
            .Turned(33)
            .MirroredLeftRight();

        var read = DxfSamples.Chips(pattern, SaveOptions.Default.WithDxfVersion(version));

        var drawn = pattern.Chips.Select(chip => chip.Outline).ToList();
        read.Count.ShouldBe(drawn.Count);
        foreach (var (shape, outline) in read.Zip(drawn))
        {
            shape.IsClosed.ShouldBeTrue();
            shape.Corners.Count.ShouldBe(outline.Count);
            foreach (var (corner, vertex) in shape.Corners.Zip(outline.Vertices))
            {
                corner.X.ShouldBe(vertex.Point.X, 0.51e-6);
                corner.Y.ShouldBe(vertex.Point.Y, 0.51e-6);
                corner.Bulge.ShouldBe(vertex.Bulge, 1e-12);
            }
        }
    }

    [Fact]
    public void Mirrored_chips_are_written_out_counter_clockwise()
    {
        var mirrored = Pattern.OfChips(DxfSamples.Triangle).MirroredLeftRight();

        var chip = DxfSamples.Chips(mirrored).ShouldHaveSingleItem();

        DoubledArea(chip).ShouldBePositive();
        chip.Corners.Max(corner => corner.Bulge).ShouldBe(0.1);
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void A_chip_with_a_hole_is_two_closed_contours(DxfVersion version)
    {
        var frame = Pattern.OfChips(
            new Region(
                Contour.Rectangle(new(0, 0), new(30, 20)),
                Contour.Rectangle(new(5, 5), new(25, 15))
            ).Parts
        );
        var options = SaveOptions.Default.WithDxfVersion(version);

        var rings = DxfSamples.Chips(frame.MirroredLeftRight(), options);

        rings.ShouldAllBe(ring => ring.IsClosed);
        rings.Select(ring => DoubledArea(ring) / 2).ShouldBe([30 * 20, -20 * 10]);
        frame.Save(Stream.Null, FileFormat.Dxf, For.Machine, options).ChipCount.ShouldBe(1);
    }

    [Fact]
    public void Neighbours_meet_in_the_same_digits()
    {
        var corners = DxfSamples
            .Chips(Pattern.OfChips(DxfSamples.Triangle).Repeated(91, 8).Scaled(8.0275 / 8 / 3))
            .SelectMany(chip => chip.Corners.Where(corner => corner.Y == 0))
            .Select(corner => corner.X);

        // 91 chips have 92 corners on the base line.
        corners.Distinct().Count().ShouldBe(92);
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void The_same_pattern_gives_the_same_bytes(DxfVersion version, SharedSides sides)
    {
        var options = SaveOptions.Default.WithDxfVersion(version).WithSharedSides(sides);

        DxfSamples
            .Write(DxfSamples.Everything(), options)
            .ShouldBe(DxfSamples.Write(DxfSamples.Everything(), options));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Bytes_do_not_depend_on_the_culture(string culture)
    {
        var (here, hereR12) = (WriteEverything(), WriteEverything(R12));
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo(culture);
        try
        {
            WriteEverything().ShouldBe(here);
            WriteEverything(R12).ShouldBe(hereR12);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Marks_come_before_cuts_and_the_outline_of_the_wood_last()
    {
        var layers = DxfSamples
            .Read(DxfSamples.Everything())
            .Shapes.Select(shape => shape.Layer)
            .Distinct();

        layers.ShouldBe(["NOTE", "LABELS", "LAYOUT_LINES", "LINE_CUTS", "CHIPS", "STOCK"]);
    }

    [Fact]
    public void Lines_laid_over_one_another_are_drawn_once()
    {
        var pattern = Pattern.OfLayoutLines(
            Chain.Line(new(0, 0), new(50, 0)),
            Chain.Line(new(50, 0), new(0, 0)),
            Chain.Line(new(40, 0), new(60, 0))
        );

        var line = DxfSamples.Read(pattern).Shapes.ShouldHaveSingleItem();
        var result = pattern.Save(Stream.Null, FileFormat.Dxf, For.Machine);

        line.Pieces.Sum(piece => piece.Length).ShouldBe(60);
        result.RepeatedLength.ShouldBe(60, 1e-9);
    }

    [Fact]
    public void Wood_that_two_patterns_bring_along_is_cut_once()
    {
        var wood = Contour.Rectangle(new(0, 0), new(100, 36));

        var pattern = Pattern.OfStock(wood).With(Pattern.OfStock(wood.StartingAt(2).Reversed()));

        DxfSamples.Read(pattern).Shapes.Count.ShouldBe(1);
        var result = pattern.Save(Stream.Null, FileFormat.Dxf, For.Machine);
        result.RepeatedLength.ShouldBe(272);
    }

    [Fact]
    public void A_chip_too_small_for_the_decimals_is_refused_with_its_place()
    {
        var tiny = DxfSamples.Triangle.Transformed(
            Transform.Resize(1e-5).Then(Transform.Move(3, 4))
        );

        var error = Should.Throw<PatternException>(() =>
            DxfSamples.Write(Pattern.OfChips(tiny), SaveOptions.Default.WithDecimals(3))
        );

        error.Place.ShouldBe(new Point(3, 4));
        error.Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void Corners_that_round_to_the_same_digits_are_one()
    {
        var doubled = new Contour([new(0, 0), new(8, 0), new(8, 1e-8), new(4, 4), new(1e-8, 0)]);

        DxfSamples.Chips(Pattern.OfChips(doubled)).Single().Corners.Count.ShouldBe(3);
    }

    [Theory]
    [InlineData(0.0004, true)]
    [InlineData(0.0006, false)]
    public void An_arc_flatter_than_half_a_thousandth_is_a_line(double sagitta, bool isLine)
    {
        var chip = new Contour([new(0, 0, 2 * sagitta / 66), new(66, 0), new(33, 30)]);

        var bulge = DxfSamples.Chips(Pattern.OfChips(chip)).Single().Corners[0].Bulge;

        (bulge == 0).ShouldBe(isLine);
    }

    [Fact]
    public void A_million_chips_are_written_without_an_allocation_for_each()
    {
        var pattern = Pattern.OfChips(DxfSamples.Triangle).Repeated(1_000_000, 0.9);
        var before = GC.GetAllocatedBytesForCurrentThread();

        pattern.Save(Stream.Null, FileFormat.Dxf, For.Machine);

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(1_000_000);
    }

    private static byte[] WriteEverything(SaveOptions? options = null) =>
        DxfSamples.Write(DxfSamples.Everything(), options);

    /// <summary>Twice the area between the corners, positive when they run counter-clockwise.</summary>
    private static double DoubledArea(DxfShape shape) =>
        shape.Pieces.Sum(piece => piece.From.X * piece.To.Y - piece.To.X * piece.From.Y);
}
