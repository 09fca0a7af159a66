using System.Text;
using System.Xml.Linq;
using PatternGen.Tests.Geometry;
using SkiaSharp;
using Svg.Skia;

namespace PatternGen.Tests.Output.Svg;

/// <summary>What an independent renderer draws from what was written, at 10 pixels a millimetre.</summary>
public class SvgRenderTests
{
    private const int PixelsPerMm = 10;

    /// <summary>The renderer draws arcs as chords that lie up to a quarter of a pixel inside.</summary>
    private const double Flattening = 5e-4;

    /// <summary>A 100 × 50 mm chip, on a sheet of 254 × 254 mm, which is 960 pixels of 1/96 inch.</summary>
    [Fact]
    public void A_chip_has_its_size_and_place()
    {
        var chip = Contour.Rectangle(new(20, 30), new(120, 80));
        var dark = DarkPixels(Sheet(Pattern.OfChips(chip)));
        // The sheet begins 8 mm left of the board and 8 mm above its upper edge at 238 mm.
        dark.Left.ShouldBe((20 + 8) * PixelsPerMm);
        dark.Right.ShouldBe((120 + 8) * PixelsPerMm);
        dark.Top.ShouldBe((238 - 80 + 8) * PixelsPerMm);
        dark.Bottom.ShouldBe((238 - 30 + 8) * PixelsPerMm);
        dark.Area.ShouldBe(100 * 50, 1);
    }

    /// <summary>
    /// Lens of two circles of radius 100 mm through each other's centres, from MathWorld, "Vesica Piscis": area
    /// R² (4π - 3√3) / 6.
    /// </summary>
    [Fact]
    public void A_lens_has_its_area()
    {
        var bulge = Math.Tan(Math.PI / 6);
        var lens = Samples.Lens(100 * Math.Sqrt(3), bulge).Transformed(Transform.Move(30, 119));
        var area = 100 * 100 * (4 * Math.PI - 3 * Math.Sqrt(3)) / 6;
        DarkPixels(Sheet(Pattern.OfChips(lens))).Area.ShouldBe(area, area * Flattening);
    }

    [Fact]
    public void A_circle_has_its_area()
    {
        var disk = new Circle(new(119, 119), 80).ToContour();
        var area = Math.PI * 80 * 80;
        DarkPixels(Sheet(Pattern.OfChips(disk))).Area.ShouldBe(area, area * Flattening);
    }

    /// <summary>Filled by direction, a hole would be filled too if it ran the same way as its outline.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_hole_in_a_chip_is_left_as_ground(bool isMirrored)
    {
        var ring = new Region(Shapes.Circle(80, 119, 119), Shapes.Circle(50, 100, 119));
        var pattern = Pattern.OfChips(ring.Parts);
        var area = Math.PI * (80 * 80 - 50 * 50);
        DarkPixels(Sheet(isMirrored ? pattern.MirroredLeftRight(119) : pattern))
            .Area.ShouldBe(area, Math.PI * (80 * 80 + 50 * 50) * Flattening);
    }

    /// <summary>The picture for viewing, with chips black, all else white, and no lines.</summary>
    private static string Sheet(Pattern chips)
    {
        var board = Pattern.OfStock(Contour.Rectangle(Point.Origin, new(238, 238)));
        var file = WrittenSvg.Of(Pattern.Combine(board, chips), For.Viewing);
        (file.Width, file.Height).ShouldBe((254, 254));
        file.Root.Elements().Where(IsWalls).ToList().ForEach(walls => walls.Remove());
        foreach (var element in file.Root.DescendantsAndSelf())
        {
            var isChips = (string?)element.Attribute("id") == "chips";
            if (element.Attribute("fill") is { } fill)
                fill.Value = isChips ? "#000000" : "#ffffff";
            element.Attribute("stroke")?.SetValue("none");
        }
        return file.Root.ToString();
    }

    private static bool IsWalls(XElement group) =>
        ((string?)group.Attribute("id"))?.StartsWith("walls", StringComparison.Ordinal) == true;

    private static (int Left, int Top, int Right, int Bottom, double Area) DarkPixels(string svg)
    {
        using var drawing = new SKSvg();
        drawing.Load(new MemoryStream(Encoding.UTF8.GetBytes(svg)));
        var picture = drawing.Picture.ShouldNotBeNull();
        using var bitmap = new SKBitmap(254 * PixelsPerMm, 254 * PixelsPerMm);
        using var canvas = new SKCanvas(bitmap);
        // The renderer lays 96 pixels on an inch.
        canvas.Scale(PixelsPerMm * 25.4f / 96);
        canvas.DrawPicture(picture);
        var (left, top, right, bottom, sum) = (bitmap.Width, bitmap.Height, 0, 0, 0.0);
        for (var y = 0; y < bitmap.Height; y++)
        for (var x = 0; x < bitmap.Width; x++)
        {
            var darkness = (255 - bitmap.GetPixel(x, y).Red) / 255.0;
            sum += darkness;
            if (darkness < 0.5)
                continue;
            (left, top) = (Math.Min(left, x), Math.Min(top, y));
            (right, bottom) = (Math.Max(right, x + 1), Math.Max(bottom, y + 1));
        }
        return (left, top, right, bottom, sum / PixelsPerMm / PixelsPerMm);
    }
}
