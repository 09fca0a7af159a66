using SkiaSharp;
using Svg.Skia;

namespace PatternGen.Gallery;

/// <summary>Turns a saved SVG into a PNG to look at.</summary>
internal static class Picture
{
    /// <summary>Pixels of the longer side, if that leaves the shorter one enough.</summary>
    private const float LongerSide = 2400;

    /// <summary>Pixels of the shorter side at least: a long rail is drawn so large that its chips are seen.</summary>
    private const float ShorterSide = 320;

    /// <summary>Pixels beyond which a picture is cut off: of a very long rail one end is shown.</summary>
    private const float Longest = 6000;

    internal static void Save(string svgPath, string pngPath)
    {
        using var svg = new SKSvg();
        using var picture =
            svg.Load(svgPath) ?? throw new IOException($"'{svgPath}' can't be drawn as a picture.");
        var size = picture.CullRect;
        var scale = Math.Max(
            LongerSide / Math.Max(size.Width, size.Height),
            ShorterSide / Math.Min(size.Width, size.Height)
        );
        var info = new SKImageInfo(Pixels(size.Width * scale), Pixels(size.Height * scale));
        using var surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale(scale);
        surface.Canvas.DrawPicture(picture);
        using var image = surface.Snapshot();
        using var png = image.Encode(SKEncodedImageFormat.Png, 100);
        TargetFile.Write(pngPath, png.SaveTo);
    }

    private static int Pixels(float length) => (int)Math.Clamp(MathF.Round(length), 1, Longest);
}
