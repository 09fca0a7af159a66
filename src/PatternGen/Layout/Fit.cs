namespace PatternGen;

/// <summary>How a band was fitted to a measured length.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Fit
{
    internal Fit(
        int parts,
        int repeatsInPart,
        double pitch,
        double askedPitch,
        double leftMargin,
        double rightMargin,
        EndMatch ends,
        int leftOutAtMiddle,
        bool isClosed = false
    )
    {
        Parts = parts;
        RepeatsInPart = repeatsInPart;
        Pitch = pitch;
        AskedPitch = askedPitch;
        LeftMargin = leftMargin;
        RightMargin = rightMargin;
        Ends = ends;
        LeftOutAtMiddle = leftOutAtMiddle;
        IsClosed = isClosed;
    }

    /// <summary>Repeats in all.</summary>
    public int Repeats => Parts * RepeatsInPart;

    /// <summary>Number of equal bands that the repeats are shared among: 1, or 2 beside a centre motif.</summary>
    public int Parts { get; }

    /// <summary>Repeats in each of them.</summary>
    public int RepeatsInPart { get; }

    /// <summary>Length of one repeat in mm. 730.5 mm in 91 repeats make 8.0275.</summary>
    public double Pitch { get; }

    /// <summary>The pitch that was aimed at, in mm.</summary>
    public double AskedPitch { get; }

    /// <summary>Pitch less the pitch asked, in mm: positive when repeats became longer.</summary>
    public double Deviation => Pitch - AskedPitch;

    /// <summary>Uncarved length at the left end in mm: what was asked, and half of what a fixed pitch leaves over.</summary>
    public double LeftMargin { get; }

    /// <summary>Uncarved length at the right end in mm.</summary>
    public double RightMargin { get; }

    /// <summary>How the ends match.</summary>
    public EndMatch Ends { get; }

    /// <summary>Leaning chips that were left out where the band turns round at its middle; 0 for most bands.</summary>
    public int LeftOutAtMiddle { get; }

    /// <summary>Whether the band runs round without ends, as round a circle: the last repeat meets the first, and margins are 0.</summary>
    public bool IsClosed { get; }

    /// <summary>
    /// Returns the fit in words, with the deviation: <c>91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike;
    /// each repeat 0.0275 mm longer than asked</c>.
    /// </summary>
    /// <param name="wording">The language; English by default.</param>
    public string InWords(Wording? wording = null)
    {
        var words = wording ?? Wording.English;
        return Pitch == AskedPitch
            ? Sentence(words)
            : $"{Sentence(words)}; {words.Deviation(Deviation)}";
    }

    /// <summary>Returns the fit in English words: <c>91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike</c>.</summary>
    public override string ToString() => Sentence(Wording.English);

    private string Sentence(Wording words)
    {
        if (IsClosed)
            return words.ClosedFit(Repeats, Pitch, AskedPitch);
        var fit = words.Fit(Parts, RepeatsInPart, Pitch, AskedPitch, LeftMargin, RightMargin, Ends);
        return LeftOutAtMiddle == 0 ? fit : $"{fit}, {words.LeftOutAtMiddle(LeftOutAtMiddle)}";
    }
}
