using SkiaSharp;
using Svg.Skia;

namespace PatternGen.Gallery;

/// <summary>Turns a saved SVG into a PNG to look at.</summary>
internal static class Picture
{
    /// <summary>Pixels of the longer side: sharp on a screen, and the longest rail stays a small file.</summary>
    private const float LongerSide = 2400;

    internal static void Save(string svgPath, string pngPath)
    {
        using var svg = new SKSvg();
        using var picture =
            svg.Load(svgPath) ?? throw new IOException($"'{svgPath}' can't be drawn as a picture.");
        var size = picture.CullRect;
        var scale = LongerSide / Math.Max(size.Width, size.Height);
        using var png = new MemoryStream();
        svg.Save(png, SKColors.White, SKEncodedImageFormat.Png, 100, scale, scale);
        WholeFile.Write(pngPath, png.ToArray());
    }
}
