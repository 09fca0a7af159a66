namespace PatternGen;

/// <summary>Bands of depth and their colours.</summary>
internal sealed class DepthScale
{
    /// <summary>Bands at most: more can't be told from each other on a scale.</summary>
    private const int MostBands = 8;

    /// <summary>
    /// From the surface to the deepest: sand, moss, sea, night. Each is darker than the one before, so that they are told
    /// apart without seeing colours too.
    /// </summary>
    private static readonly Tone[] Colours =
    [
        new(0xf6, 0xe4, 0xb0),
        new(0xb5, 0xcb, 0x96),
        new(0x62, 0xa3, 0x98),
        new(0x2f, 0x73, 0x8c),
        new(0x25, 0x46, 0x74),
        new(0x1d, 0x1b, 0x47),
    ];

    /// <param name="deepest">Depth in mm at the end of the scale, more than 0.</param>
    internal DepthScale(double deepest)
    {
        Deepest = deepest;
        Step = RoundStep(deepest / MostBands);
        BandCount = (int)Math.Ceiling(deepest / Step - Rounding);
    }

    /// <summary>Share of a band that is rounding and no band of its own.</summary>
    private const double Rounding = 1e-9;

    internal double Deepest { get; }

    /// <summary>Depth in mm from one band to the next: 1, 2 or 5 of tenths, ones or tens.</summary>
    internal double Step { get; }

    internal int BandCount { get; }

    /// <summary>Depth in mm where a band, counted from 0, begins.</summary>
    internal double StartOf(int band) => band * Step;

    /// <summary>Depth in mm where a band ends.</summary>
    internal double EndOf(int band) => Math.Min(Deepest, (band + 1) * Step);

    /// <summary>The colour of a band.</summary>
    internal string ColourOf(int band)
    {
        var place = BandCount > 1 ? (double)band / (BandCount - 1) * (Colours.Length - 1) : 0;
        var at = Math.Min((int)place, Colours.Length - 2);
        return Colours[at].Towards(Colours[at + 1], place - at).ToString();
    }

    /// <summary>The smallest of 1, 2, 5, 10, 20, 50 … and their tenths that is not under the given one.</summary>
    internal static double RoundStep(double least)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        foreach (var factor in (double[])[1, 2, 5])
            if (factor * power >= least * (1 - Rounding))
                return factor * power;
        return 10 * power;
    }
}
