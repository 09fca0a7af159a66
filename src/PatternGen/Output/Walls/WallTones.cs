using System.Text;

namespace PatternGen;

/// <summary>The colours of carved wood, from walls in the deepest shade to those that face the light.</summary>
internal sealed class WallTones
{
    /// <summary>Steps from dark to bright: two of them next to each other look alike.</summary>
    private const int Count = 128;

    /// <summary>Brightness, as a share of that of the ground, at which a carved wall has the tone between dark and even.</summary>
    private const double ShadeAt = 0.5;

    private readonly byte[][] _fills;

    private WallTones(Func<double, Tone> toneAt) =>
        _fills = [.. Enumerable.Range(0, Count).Select(step => Fill(toneAt((step + 0.5) / Count)))];

    /// <summary>For drawings: darker than the ground even in full light, so that chips read as cut away.</summary>
    internal static WallTones Drawn { get; } = new(DrawnAt);

    /// <summary>Like wood under a light: as bright as the ground where a wall is as bright, and brighter where it faces the light.</summary>
    internal static WallTones Carved(CarvingLight light)
    {
        var (dark, shade) = (new Tone(0x33, 0x1b, 0x0c), new Tone(0x8d, 0x5d, 0x33));
        var (even, bright) = (new Tone(0xdd, 0xbe, 0x8e), new Tone(0xff, 0xf3, 0xdc));
        var ground = light.Ground;
        return new(brightness =>
            brightness < ShadeAt * ground ? dark.Towards(shade, brightness / (ShadeAt * ground))
            : brightness < ground
                ? shade.Towards(even, (brightness / ground - ShadeAt) / (1 - ShadeAt))
            : even.Towards(bright, ground < 1 ? (brightness - ground) / (1 - ground) : 0)
        );
    }

    /// <summary>Returns the fill of a wall, as an attribute with its leading space.</summary>
    /// <param name="brightness">From 0 to 1.</param>
    internal ReadOnlySpan<byte> Of(double brightness) =>
        _fills[(int)Math.Clamp(brightness * Count, 0, Count - 1)];

    private static Tone DrawnAt(double brightness)
    {
        var (dark, middle, bright) = (
            new Tone(0x43, 0x26, 0x11),
            new Tone(0x96, 0x68, 0x3c),
            new Tone(0xdd, 0xb9, 0x88)
        );
        return brightness < 0.5
            ? dark.Towards(middle, 2 * brightness)
            : middle.Towards(bright, 2 * brightness - 1);
    }

    private static byte[] Fill(Tone tone) => Encoding.ASCII.GetBytes($" fill=\"{tone}\"");
}
