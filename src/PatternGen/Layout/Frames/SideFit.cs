using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How a band was fitted to one side of a frame.</summary>
/// <remarks>
/// <see cref="Repeats"/> times <see cref="Pitch"/>, both margins and the gap in the middle make <see cref="Length"/>.
/// Immutable and safe to share between threads.
/// </remarks>
public sealed class SideFit
{
    private SideFit(int side, int band, double length, int repeats, double pitch, double asked)
    {
        Side = side;
        Band = band;
        Length = length;
        Repeats = repeats;
        Pitch = pitch;
        AskedPitch = asked;
    }

    /// <summary>Number of the side, counter-clockwise from 1: the lower side of a rectangle; 0 for a band that bends round all of them.</summary>
    public int Side { get; }

    /// <summary>Number of the band, from the outermost, 1.</summary>
    public int Band { get; }

    /// <summary>
    /// Length that was divided, in mm: of a mitred band from mitre to mitre on the rule nearest to the middle of its rows,
    /// else the side between its corners, or the way round. 320 mm with a rule 11 mm from the edge make 298 mm between mitres.
    /// </summary>
    public double Length { get; }

    /// <summary>Repeats in all. Of a mitred band that begins with the middle of a repeat, the two halves at the ends count as one.</summary>
    public int Repeats { get; }

    /// <summary>Length of one repeat in mm.</summary>
    public double Pitch { get; }

    /// <summary>The pitch that was aimed at, in mm.</summary>
    public double AskedPitch { get; }

    /// <summary>Pitch less the pitch asked, in mm: positive when repeats became longer.</summary>
    public double Deviation => Pitch - AskedPitch;

    /// <summary>Uncarved length at the first end in mm; 0 at a mitre.</summary>
    public double FirstMargin { get; private init; }

    /// <summary>Uncarved length at the last end in mm; 0 at a mitre.</summary>
    public double LastMargin { get; private init; }

    /// <summary>Length left free in the middle in mm: for a centre motif, or what one pitch for all leaves over between mitres.</summary>
    public double MiddleGap { get; private init; }

    /// <summary>Leaning chips that were left out where the band turns round at its middle.</summary>
    public int LeftOutAtMiddle { get; private init; }

    /// <summary>Returns the fit in words: <c>37 repeats, pitch 8.0541 mm (8 asked); each repeat 0.0541 mm longer than asked</c>.</summary>
    /// <param name="wording">The language; English by default.</param>
    public string InWords(Wording? wording = null)
    {
        var words = wording ?? Wording.English;
        var fit = words.SideFit(Repeats, Pitch, AskedPitch, FirstMargin, LastMargin, MiddleGap);
        if (LeftOutAtMiddle > 0)
            fit = $"{fit}, {words.LeftOutAtMiddle(LeftOutAtMiddle)}";
        return Pitch == AskedPitch ? fit : $"{fit}; {words.Deviation(Deviation)}";
    }

    /// <summary>Returns the fit in English words, with the number of the side.</summary>
    public override string ToString() =>
        Side == 0 ? $"All round: {InWords()}" : $"Side {Side}: {InWords()}";

    internal static SideFit Mitred(int side, int band, MitredFit fit, int leftOut) =>
        new(side, band, fit.Length, fit.Parts * fit.Repeats, fit.Pitch, fit.Asked)
        {
            MiddleGap = fit.MiddleGap,
            LeftOutAtMiddle = leftOut,
        };

    internal static SideFit Round(int band, double length, Fit fit) =>
        new(0, band, length, fit.Repeats, fit.Pitch, fit.AskedPitch);

    internal static SideFit Straight(int side, int band, double length, Fit fit) =>
        new(side, band, length, fit.Repeats, fit.Pitch, fit.AskedPitch)
        {
            FirstMargin = fit.LeftMargin,
            LastMargin = fit.RightMargin,
            MiddleGap =
                length - fit.LeftMargin - fit.RightMargin - fit.Repeats * fit.Pitch is var gap
                && gap > Tolerance.ForExtent(length).Merge
                    ? gap
                    : 0,
            LeftOutAtMiddle = fit.LeftOutAtMiddle,
        };
}
