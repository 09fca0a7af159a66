using System.Globalization;
using System.Text;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How walls look in the light that drawings are lit by, from the upper left.</summary>
internal static class WallTones
{
    /// <summary>Steps from dark to light: enough for a round chip to look round.</summary>
    private const int Count = 16;

    /// <summary>Towards the light.</summary>
    private static readonly Vector Light = new(-0.6, 0.8);

    private static readonly (int Red, int Green, int Blue) Dark = (0x45, 0x29, 0x14);

    private static readonly (int Red, int Green, int Blue) Bright = (0xd2, 0xac, 0x7c);

    private static readonly byte[][] Fills = [.. Enumerable.Range(0, Count).Select(FillOf)];

    /// <summary>Returns the fill of a wall, as an attribute.</summary>
    /// <param name="facing">Where the wall looks, of any length: a wall slopes down to the left of its side.</param>
    internal static ReadOnlySpan<byte> Of(Vector facing) => Fills[StepOf(facing)];

    /// <summary>Which of the tones a wall has: equal for walls that look alike.</summary>
    internal static int StepOf(Vector facing)
    {
        var cosine = facing.Dot(Light) / facing.Length;
        return (int)Math.Clamp((1 + cosine) / 2 * Count, 0, Count - 1);
    }

    private static byte[] FillOf(int step)
    {
        var share = (double)step / (Count - 1);
        int Mixed(int dark, int bright) => (int)Math.Round(dark + (bright - dark) * share);
        return Encoding.ASCII.GetBytes(
            string.Create(
                CultureInfo.InvariantCulture,
                $" fill=\"#{Mixed(Dark.Red, Bright.Red):x2}{Mixed(Dark.Green, Bright.Green):x2}{Mixed(Dark.Blue, Bright.Blue):x2}\""
            )
        );
    }
}
