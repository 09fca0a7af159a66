using System.Globalization;
using System.Text;

namespace PatternGen;

/// <summary>The colours of carved wood, from walls in the deepest shade to those that face the light.</summary>
internal sealed class WallTones
{
    /// <summary>Steps from dark to bright: two of them next to each other look alike.</summary>
    private const int Count = 128;

    /// <summary>The uncarved surface: planed lime, a little oiled.</summary>
    internal const string Ground = "#e8d3ab";

    private static readonly (int Red, int Green, int Blue) Dark = (0x33, 0x1b, 0x0c);
    private static readonly (int Red, int Green, int Blue) Shade = (0x8d, 0x5d, 0x33);
    private static readonly (int Red, int Green, int Blue) Even = (0xdd, 0xbe, 0x8e);
    private static readonly (int Red, int Green, int Blue) Bright = (0xff, 0xf3, 0xdc);

    /// <summary>Brightness, as a share of that of the ground, at which a wall has the tone between dark and even.</summary>
    private const double ShadeAt = 0.5;

    private readonly byte[][] _fills;

    internal WallTones(CarvingLight light) =>
        _fills = [.. Enumerable.Range(0, Count).Select(step => Fill(step, light.Ground))];

    internal static WallTones Usual { get; } = new(CarvingLight.Usual);

    /// <summary>Returns the fill of a wall, as an attribute with its leading space.</summary>
    /// <param name="brightness">From 0 to 1.</param>
    internal ReadOnlySpan<byte> Of(double brightness) =>
        _fills[(int)Math.Clamp(brightness * Count, 0, Count - 1)];

    private static byte[] Fill(int step, double ground)
    {
        var brightness = (step + 0.5) / Count;
        var share = brightness / ground;
        var (from, to, at) =
            share < ShadeAt ? (Dark, Shade, share / ShadeAt)
            : share < 1 ? (Shade, Even, (share - ShadeAt) / (1 - ShadeAt))
            : (Even, Bright, ground < 1 ? (brightness - ground) / (1 - ground) : 0);
        int Mixed(int dark, int bright) => (int)Math.Round(dark + (bright - dark) * at);
        return Encoding.ASCII.GetBytes(
            string.Create(
                CultureInfo.InvariantCulture,
                $" fill=\"#{Mixed(from.Red, to.Red):x2}{Mixed(from.Green, to.Green):x2}{Mixed(from.Blue, to.Blue):x2}\""
            )
        );
    }
}
