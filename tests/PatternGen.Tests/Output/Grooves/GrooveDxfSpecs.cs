using System.Globalization;
using PatternGen.Tests.Output.Dxf;
using PatternGen.Tests.Output.Saving;

namespace PatternGen.Tests.Output.Grooves;

public sealed class GrooveDxfSpecs : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<DxfVersion> Versions() => [DxfVersion.R2000, DxfVersion.R12];

    public void Dispose() => _folder.Dispose();

    /// <summary>Chips with and without tips, with a hole, line cuts of both kinds and a closed one, on wood with a hole.</summary>
    internal static GroovePaths Everything() =>
        DxfSamples
            .Everything()
            .With(
                Pattern.OfLineCuts(
                    LineCut.Tapering(new Chain([new(0, 33, 0.2), new(40, 33)]), 2),
                    new LineCut(new Chain([new(70, 35, 1), new(76, 35, 1), new(70, 35)]), 1)
                )
            )
            .GroovePaths(VBit.Of(60, 12));

    internal static byte[] Write(GroovePaths paths, SaveOptions? options = null)
    {
        using var stream = new MemoryStream();
        paths.Save(stream, options);
        return stream.ToArray();
    }

    private static byte[] Write(DxfVersion version) =>
        Write(Everything(), SaveOptions.Default.WithDxfVersion(version));

    [Theory]
    [MemberData(nameof(Versions))]
    public void A_strict_reader_finds_nothing_wrong(DxfVersion version) =>
        DxfLint.Check(Write(version)).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Versions))]
    public void The_file_holds_the_paths_the_wood_and_a_note(DxfVersion version)
    {
        var file = DxfDocument.Parse(Write(version));
        file.Shapes.Select(shape => shape.Layer).Distinct().ShouldBe(["NOTE", "GROOVES", "STOCK"]);
        file.TableRecords("LAYER")
            .Select(layer => layer.Value(2))
            .ShouldBe(["0", "NOTE", "GROOVES", "STOCK"]);
        file.Shapes.Count(shape => shape.Layer == "GROOVES").ShouldBe((int)Everything().PathCount);
    }

    [Theory]
    [MemberData(nameof(Versions))]
    public void Each_corner_stands_in_the_file_with_z_down(DxfVersion version)
    {
        var corners = DxfDocument
            .Parse(Write(version))
            .Entities.Where(record => record.Type == "VERTEX" && record.Layer == "GROOVES")
            .ToList();
        // A path that ends where it starts is closed, and has its first corner once.
        var places = Everything()
            .Paths.SelectMany(path =>
                path.Places[0] == path.Places[^1] ? path.Places.SkipLast(1) : path.Places
            )
            .ToList();
        corners.Count.ShouldBe(places.Count);
        foreach (var (corner, place) in corners.Zip(places))
        {
            corner.Number(10).ShouldBe(place.Point.X, 1e-6);
            corner.Number(20).ShouldBe(place.Point.Y, 1e-6);
            corner.Number(30).ShouldBe(-place.Depth, 4e-6);
            // Rounded towards the surface.
            corner.Number(30).ShouldBeGreaterThanOrEqualTo(-place.Depth - 1e-12);
            corner.Number(30).ShouldBeLessThanOrEqualTo(0);
        }
        corners.Min(corner => corner.Number(30)).ShouldBe(-Everything().Deepest, 4e-6);
    }

    [Fact]
    public void A_path_that_ends_where_it_starts_is_closed()
    {
        var closed = DxfDocument
            .Parse(Write(DxfVersion.R2000))
            .Shapes.Where(shape => shape.Layer == "GROOVES" && shape.IsClosed);
        closed.ShouldHaveSingleItem().Corners.ShouldContain(corner => corner.X == 70);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(9)]
    public void Any_number_of_decimals_makes_a_clean_file(int decimals) =>
        DxfLint
            .Check(Write(Everything(), SaveOptions.Default.WithDecimals(decimals)))
            .ShouldBeEmpty();

    [Fact]
    public void The_same_paths_give_the_same_bytes_in_any_culture()
    {
        var bytes = Write(Everything());
        var before = CultureInfo.CurrentCulture;
        try
        {
            foreach (var culture in new[] { "de-DE", "ar-EG", "tr-TR" })
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Write(Everything()).ShouldBe(bytes);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public async Task Files_and_streams_get_the_same_bytes_at_once_or_not()
    {
        var stop = TestContext.Current.CancellationToken;
        var bytes = Write(Everything());
        Everything().Save(_folder.File("a.dxf"));
        await Everything().SaveAsync(_folder.File("b.dxf"), cancellation: stop);
        using var stream = new MemoryStream();
        await Everything().SaveAsync(new OneWayStream(stream), cancellation: stop);
        (await File.ReadAllBytesAsync(_folder.File("a.dxf"), stop)).ShouldBe(bytes);
        (await File.ReadAllBytesAsync(_folder.File("b.dxf"), stop)).ShouldBe(bytes);
        stream.ToArray().ShouldBe(bytes);
        _folder.Names.Count().ShouldBe(2);
    }

    [Fact]
    public async Task A_cancelled_save_leaves_no_file()
    {
        await Should.ThrowAsync<OperationCanceledException>(() =>
            Everything().SaveAsync(_folder.File("a.dxf"), cancellation: new CancellationToken(true))
        );
        _folder.Names.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("paths.svg")]
    [InlineData("paths")]
    [InlineData(" ")]
    public void Other_files_than_dxf_are_refused(string name) =>
        Should.Throw<ArgumentException>(() => Everything().Save(name));

    [Fact]
    public void A_pattern_without_wood_is_written_too()
    {
        var paths = Pattern.OfChips(DxfSamples.Triangle).GroovePaths(VBit.Of());
        DxfLint.Check(Write(paths)).ShouldBeEmpty();
    }
}
