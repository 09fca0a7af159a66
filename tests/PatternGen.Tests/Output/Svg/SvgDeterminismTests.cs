using System.Globalization;

namespace PatternGen.Tests.Output.Svg;

public class SvgDeterminismTests
{
    private static readonly For[] Purposes = [For.Viewing, For.Paper, For.Machine];

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_culture_changes_nothing(string culture)
    {
        var expected = Purposes.Select(Bytes).ToArray();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Purposes.Select(Bytes).ToArray().ShouldBe(expected);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void The_same_pattern_gives_the_same_bytes_on_many_threads()
    {
        var board = Samples.Board();
        var expected = WrittenSvg.Of(board, For.Paper).Bytes;
        Parallel.For(0, 16, _ => WrittenSvg.Of(board, For.Paper).Bytes.ShouldBe(expected));
    }

    private static byte[] Bytes(For purpose) => WrittenSvg.Of(Samples.Board(), purpose).Bytes;
}
