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
}
