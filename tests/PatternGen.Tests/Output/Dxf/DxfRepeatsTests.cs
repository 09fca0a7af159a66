using System.Globalization;

namespace PatternGen.Tests.Output.Dxf;

/// <summary>Chips that are written once and referred to.</summary>
public class DxfRepeatsTests
{
    private static readonly SaveOptions ByReference = SaveOptions.Default.WithRepeats(
        Repeats.ByReference
    );

    public static TheoryData<string> Names => [.. RepeatSamples.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_references_lead_to_the_chips_of_the_pattern(string name)
    {
        var pattern = RepeatSamples.All[name];

        var read = DxfSamples.Chips(pattern, ByReference);

        var drawn = pattern.Chips.SelectMany(chip => chip.Holes.Prepend(chip.Outline)).ToList();
        read.Count.ShouldBe(drawn.Count);
        foreach (var (shape, outline) in read.Zip(drawn))
            ShouldBeAlike(shape, outline);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_file_is_clean_and_as_large_as_in_full(string name)
    {
        var pattern = RepeatSamples.All[name];
        var file = DxfSamples.Write(pattern, ByReference);

        DxfLint.Check(file, mayShareSides: true).ShouldBeEmpty();
        var (full, referred) = (DxfSamples.Read(pattern), DxfDocument.Parse(file));
        foreach (var variable in (string[])["$EXTMIN", "$EXTMAX"])
            referred
                .Header(variable)
                .Select(group => group.Value)
                .ShouldBe(full.Header(variable).Select(group => group.Value));
    }

    [Fact]
    public void A_petal_turned_a_hundred_times_is_one_block()
    {
        var file = DxfSamples.Read(RepeatSamples.Rosette, ByReference);

        file.Blocks.Count(block => !block.IsSpace).ShouldBe(1);
        var turns = file
            .Entities.Where(record => record.Type == "INSERT")
            .Select(record => record.Value(50) is null ? 0 : record.Number(50))
            .ToList();
        turns.Count.ShouldBe(100);
        for (var i = 0; i < turns.Count; i++)
            Math.IEEERemainder(turns[i] - 3.6 * i, 360).ShouldBe(0, 1e-9);
    }

    [Fact]
    public void Outline_and_holes_are_one_block()
    {
        var file = DxfSamples.Read(RepeatSamples.Holed, ByReference);

        var blocks = file.Blocks.Where(block => !block.IsSpace).ToList();
        // Of each size one.
        blocks.Count.ShouldBe(2);
        blocks.ShouldAllBe(block => block.Content.Count == 3);
    }

    [Fact]
    public void A_chip_that_is_there_once_is_written_out()
    {
        var file = DxfSamples.Read(RepeatSamples.Alone, ByReference);

        file.Blocks.ShouldAllBe(block => block.IsSpace);
        file.Shapes.Where(shape => shape.Layer == "CHIPS")
            .Select(shape => shape.Record.Section)
            .ShouldBe(["ENTITIES", "ENTITIES"]);
    }

    [Fact]
    public void Mirrored_copies_are_written_out_with_their_bulges_turned()
    {
        var petal = Pattern.OfChips(RepeatSamples.Petal);
        var pattern = petal
            .With(petal.Moved(40, 0))
            .With(petal.MirroredTopBottom(-20))
            .With(petal.MirroredLeftRight(-20));

        var entities = DxfSamples.Read(pattern, ByReference).Entities.ToList();

        entities
            .Select(record => record.Type)
            .ShouldBe(["INSERT", "INSERT", "LWPOLYLINE", "LWPOLYLINE"]);
        var bulges = RepeatSamples.Petal.Vertices.Select(vertex => vertex.Bulge).Order();
        foreach (var mirrored in entities.Skip(2))
            // Mirrored, and walked the other way to stay counter-clockwise: each bulge keeps its sign.
            mirrored
                .Groups.Where(group => group.Code == 42)
                .Select(group => group.Number)
                .Order()
                .ShouldBe(bulges, 1e-12);
    }

    [Fact]
    public void A_chip_of_another_size_is_a_block_of_its_own()
    {
        var petals = Pattern.OfChips(RepeatSamples.Petal).Repeated(3, 40);

        var file = DxfSamples.Read(petals.With(petals.Scaled(0.5).Moved(0, 50)), ByReference);

        file.Blocks.Count(block => !block.IsSpace).ShouldBe(2);
        file.Entities.Count(record => record.Type == "INSERT").ShouldBe(6);
    }

    [Theory]
    [InlineData(SharedSides.Once, DxfVersion.R2000)]
    [InlineData(SharedSides.Closed, DxfVersion.R12)]
    [InlineData(SharedSides.Once, DxfVersion.R12)]
    public void Sides_drawn_once_and_release_12_hold_no_blocks(
        SharedSides sides,
        DxfVersion version
    )
    {
        var options = SaveOptions.Default.WithSharedSides(sides).WithDxfVersion(version);

        DxfSamples
            .Write(RepeatSamples.Rosette, options.WithRepeats(Repeats.ByReference))
            .ShouldBe(DxfSamples.Write(RepeatSamples.Rosette, options));
    }

    [Fact]
    public void In_full_is_the_default() =>
        DxfSamples
            .Write(RepeatSamples.Rosette, SaveOptions.Default.WithRepeats(Repeats.InFull))
            .ShouldBe(DxfSamples.Write(RepeatSamples.Rosette));

    [Theory]
    [InlineData("rail")]
    [InlineData("rosette")]
    public void The_file_is_smaller(string name)
    {
        var pattern = RepeatSamples.All[name];

        DxfSamples
            .Write(pattern, ByReference)
            .Length.ShouldBeLessThan(DxfSamples.Write(pattern).Length * 9 / 10);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void Bytes_depend_neither_on_the_run_nor_on_the_culture(string culture)
    {
        var here = DxfSamples.Write(RepeatSamples.Mixed, ByReference);
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo(culture);
        try
        {
            DxfSamples.Write(RepeatSamples.Mixed, ByReference).ShouldBe(here);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_million_copies_are_written_without_an_allocation_for_each()
    {
        var pattern = Pattern.OfChips(DxfSamples.Triangle).Repeated(1_000_000, 0.9);
        var before = GC.GetAllocatedBytesForCurrentThread();

        pattern.Save(Stream.Null, FileFormat.Dxf, For.Machine, ByReference);

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(1_000_000);
    }

    [Fact]
    public void A_chip_too_small_for_its_block_is_refused_with_its_place()
    {
        var speck = Contour.Polygon(new(50, 20), new(50 + 1e-7, 20), new(50, 20 + 1e-7));

        var error = Should.Throw<PatternException>(() =>
            DxfSamples.Write(Pattern.OfChips(speck).Repeated(2, 5), ByReference.WithDecimals(3))
        );

        error.Place.ShouldBe(new Point(50, 20));
    }

    /// <summary>A circle is read as two half circles, whatever corners it had.</summary>
    private static void ShouldBeAlike(DxfShape shape, Contour outline)
    {
        shape.IsClosed.ShouldBeTrue();
        shape.Corners.Count.ShouldBe(outline.Count);
        var isCircle = shape.Record.Type == "CIRCLE";
        foreach (var (corner, vertex) in shape.Corners.Zip(outline.Vertices))
        {
            if (isCircle)
            {
                outline.DistanceTo(new Point(corner.X, corner.Y)).ShouldBeLessThan(1e-6);
                continue;
            }
            corner.X.ShouldBe(vertex.Point.X, 1e-6);
            corner.Y.ShouldBe(vertex.Point.Y, 1e-6);
            corner.Bulge.ShouldBe(vertex.Bulge, 1e-12);
        }
    }
}
