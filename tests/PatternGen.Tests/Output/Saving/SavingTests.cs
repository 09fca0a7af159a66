using System.Text;

namespace PatternGen.Tests.Output.Saving;

public sealed class SavingTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("rail.svg", "<?xml")]
    [InlineData("RAIL.SVG", "<?xml")]
    [InlineData("rail.dxf", "  0\r\nSECTION")]
    public void The_extension_chooses_the_format(string name, string start)
    {
        Samples.Rail().Save(_folder.File(name));
        File.ReadAllText(_folder.File(name))
            .Replace(" ", "")
            .ShouldStartWith(start.Replace(" ", ""));
    }

    [Theory]
    [InlineData("rail")]
    [InlineData("rail.pdf")]
    [InlineData("")]
    [InlineData(" ")]
    public void Other_extensions_are_refused(string name) =>
        Should.Throw<ArgumentException>(() => Samples.Rail().Save(name));

    [Fact]
    public void A_dxf_is_for_a_machine_only() =>
        Should.Throw<ArgumentException>(() =>
            Samples.Rail().Save(_folder.File("rail.dxf"), For.Paper)
        );

    [Fact]
    public void An_empty_pattern_is_refused_and_leaves_no_file()
    {
        Should.Throw<PatternException>(() => Pattern.Empty.Save(_folder.File("none.svg")));
        _folder.Names.ShouldBeEmpty();
    }

    [Fact]
    public void A_file_is_replaced_as_a_whole_and_nothing_else_is_left()
    {
        var path = _folder.File("rail.svg");
        File.WriteAllText(path, new string('x', 1_000_000));
        Samples.Rail().Save(path);
        File.ReadAllText(path).ShouldEndWith("</svg>\n");
        _folder.Names.ShouldBe(["rail.svg"]);
    }

    [Fact]
    public void Files_and_streams_get_the_same_bytes_and_streams_stay_open()
    {
        Samples.Rail().Save(_folder.File("rail.svg"), For.Paper);
        using var file = new MemoryStream();
        Samples.Rail().Save(file, FileFormat.Svg, For.Paper);
        file.CanWrite.ShouldBeTrue();
        file.ToArray().ShouldBe(File.ReadAllBytes(_folder.File("rail.svg")));
    }

    [Fact]
    public void A_stream_that_only_goes_forwards_is_enough()
    {
        using var file = new MemoryStream();
        Samples.Rail(30_000).Save(new OneWayStream(file), FileFormat.Svg, For.Viewing);
        Encoding.UTF8.GetString(file.ToArray()).ShouldEndWith("</svg>\n");
    }

    [Fact]
    public void A_stream_that_can_not_be_written_to_is_refused() =>
        Should.Throw<ArgumentException>(() =>
            Samples.Rail().Save(new MemoryStream([], writable: false), FileFormat.Svg, For.Paper)
        );

    [Fact]
    public void What_went_wrong_with_a_stream_is_passed_on()
    {
        using var file = new MemoryStream();
        var full = new OneWayStream(file, room: 70_000);
        Should
            .Throw<IOException>(() => Samples.Rail(30_000).Save(full, FileFormat.Svg, For.Viewing))
            .Message.ShouldBe(OneWayStream.Full);
    }

    [Fact]
    public void The_result_counts_the_chips() =>
        Samples.Rail().Save(_folder.File("rail.svg")).ChipCount.ShouldBe(182);

    [Theory]
    [InlineData(FileFormat.Svg, For.Viewing)]
    [InlineData(FileFormat.Svg, For.Paper)]
    [InlineData(FileFormat.Svg, For.Machine)]
    [InlineData(FileFormat.Dxf, For.Machine)]
    public void Labels_alone_are_something_to_draw(FileFormat format, For purpose)
    {
        var labels = Pattern.OfLabels(new Label("No. 7", new(5, 100), 4));
        using var file = new MemoryStream();
        labels.Save(file, format, purpose);
        Encoding
            .UTF8.GetString(file.ToArray())
            .ShouldContain(format == FileFormat.Svg ? "aria-label=\"No. 7\"" : "LABELS\r\n");
    }

    /// <summary>10 thousand million crossings: compared each with each they take the better part of an hour.</summary>
    [Fact]
    public Task Thousands_of_lines_that_cross_are_saved_at_once() =>
        Patience.WithinMinutes(() =>
        {
            var lines = Enumerable
                .Range(0, 100_000)
                .SelectMany(i =>
                    new[]
                    {
                        Chain.Line(new(i, 0), new(i, 100_000)),
                        Chain.Line(new(0, i), new(100_000, i)),
                    }
                );
            Pattern.OfLayoutLines([.. lines]).Save(Stream.Null, FileFormat.Dxf, For.Machine);
        });

    [Fact]
    public void Repeats_are_counted()
    {
        var wood = Contour.Rectangle(new(0, 0), new(100, 36));
        var pattern = Pattern
            .OfLayoutLines(
                Chain.Line(new(0, 0), new(50, 0)),
                Chain.Line(new(50, 0), new(0, 0)),
                Chain.Line(new(40, 0), new(60, 0))
            )
            .With(Pattern.OfStock(wood))
            .With(Pattern.OfStock(wood));
        // From 0 to 40 twice, from 40 to 50 three times, and the wood twice.
        pattern.Save(Stream.Null, FileFormat.Dxf, For.Machine).RepeatedCount.ShouldBe(1 + 2 + 1);
    }
}
