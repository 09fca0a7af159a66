using System.Globalization;
using System.Text.RegularExpressions;
using SkiaSharp;

namespace PatternGen.Tests.Output.Svg;

/// <summary>True size as programs see it that people print with.</summary>
public sealed partial class SvgOutsideTests : IDisposable
{
    private const double Dpi = 600;
    private const double Pixel = 25.4 / Dpi;

    /// <summary>Width of the bar's line, which its round ends add to its length.</summary>
    private const double LineWidth = 0.2;

    /// <summary>Browsers round a page, not what is on it, to whole points.</summary>
    private const double HalfPoint = 25.4 / 72 / 2;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Librsvg_prints_the_bar_100_mm_long()
    {
        Save();
        Librsvg("--format=pdf", $"--output={_folder.File("sheet.pdf")}", _folder.File("sheet.svg"));
        PageAndBarAreTrue();
    }

    [Fact]
    public void Chromium_prints_the_bar_100_mm_long_on_one_page()
    {
        Save();
        OutsideReader.Run(
            "chromium",
            "chromium",
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-background-networking",
            "--no-pdf-header-footer",
            $"--user-data-dir={_folder.File("profile")}",
            $"--print-to-pdf={_folder.File("sheet.pdf")}",
            new Uri(_folder.File("sheet.svg")).AbsoluteUri
        );
        PageAndBarAreTrue();
    }

    /// <summary>U2: no resolution is assumed; at 600 dots an inch a sheet of 254 mm is 6000 dots wide.</summary>
    [Fact]
    public void Librsvg_draws_a_sheet_of_254_mm_in_the_dots_that_it_is_asked_for()
    {
        var board = Pattern.OfStock(Contour.Rectangle(Point.Origin, new(238, 111)));
        board.Save(_folder.File("board.svg"));
        var picture = _folder.File("board.png");
        Librsvg("--dpi-x=600", "--dpi-y=600", $"--output={picture}", _folder.File("board.svg"));
        using var drawn = SKBitmap.Decode(picture);
        drawn.Width.ShouldBe(6000);
        drawn.Height.ShouldBe(3000);
    }

    [Theory]
    [InlineData(For.Viewing)]
    [InlineData(For.Paper)]
    [InlineData(For.Machine)]
    public void Libxml_finds_no_fault(For purpose)
    {
        Samples.Board().Save(_folder.File("board.svg"), purpose);
        OutsideReader.Run("libxml2-utils", "xmllint", "--noout", _folder.File("board.svg"));
    }

    /// <summary>A chip shorter than the bar, so that the bar is the longest line.</summary>
    private void Save() =>
        Pattern.OfChips(Samples.Lens(40, 0.3)).Save(_folder.File("sheet.svg"), For.Paper);

    private void PageAndBarAreTrue()
    {
        var page = PageSize()
            .Match(OutsideReader.Run("poppler-utils", "pdfinfo", _folder.File("sheet.pdf")));
        var sheet = WrittenSvg.Of(Pattern.OfChips(Samples.Lens(40, 0.3)), For.Paper);
        Points(page.Groups[2]).ShouldBe(sheet.Width, HalfPoint);
        Points(page.Groups[3]).ShouldBe(sheet.Height, HalfPoint);
        page.Groups[1].Value.ShouldBe("1");
        LongestLine().ShouldBe(100 + LineWidth, 2 * Pixel);
    }

    private static void Librsvg(params string[] arguments) =>
        OutsideReader.Run("librsvg2-bin", "rsvg-convert", arguments);

    private static double Points(Group number) =>
        double.Parse(number.Value, CultureInfo.InvariantCulture) * 25.4 / 72;

    /// <summary>The longest dark run of pixels in a row of the printed page, in mm.</summary>
    private double LongestLine()
    {
        var pixels = _folder.File("page");
        OutsideReader.Run(
            "poppler-utils",
            "pdftoppm",
            "-r",
            "600",
            "-png",
            "-singlefile",
            _folder.File("sheet.pdf"),
            pixels
        );
        using var page = SKBitmap.Decode(pixels + ".png");
        return Enumerable.Range(0, page.Height).Max(y => LongestRun(page, y)) * Pixel;
    }

    private static int LongestRun(SKBitmap page, int y)
    {
        var (longest, run) = (0, 0);
        for (var x = 0; x < page.Width; x++)
        {
            run = page.GetPixel(x, y).Red < 128 ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }
        return longest;
    }

    [GeneratedRegex(
        @"Pages:\s+(\d+).*Page size:\s+([\d.]+) x ([\d.]+) pts",
        RegexOptions.Singleline
    )]
    private static partial Regex PageSize();
}
