using System.Globalization;

namespace PatternGen;

/// <summary>A colour, each part from 0 to 255.</summary>
internal readonly record struct Tone(double Red, double Green, double Blue)
{
    /// <summary>Returns the colour at a share of the way to another.</summary>
    internal Tone Towards(Tone other, double share) =>
        new(
            Red + (other.Red - Red) * share,
            Green + (other.Green - Green) * share,
            Blue + (other.Blue - Blue) * share
        );

    /// <summary>Returns it as files write it: <c>#e6d0a6</c>.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"#{Part(Red):x2}{Part(Green):x2}{Part(Blue):x2}"
        );

    private static int Part(double part) => (int)Math.Round(Math.Clamp(part, 0, 255));
}
