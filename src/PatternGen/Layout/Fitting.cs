using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How a band is to be fitted to a measured length.</summary>
/// <remarks>
/// The default: whole repeats at the pitch nearest to the band's nominal one, at most a third off it, no end margins.
/// Each method returns a changed copy. Immutable and safe to share between threads.
/// </remarks>
public sealed class Fitting
{
    /// <summary>How far one pitch for all may lie off the nominal one if no limits are given, as a share of it.</summary>
    private const double SharedLimit = 0.1;

    private Fitting() { }

    private Fitting(Fitting other)
    {
        NominalPitch = other.NominalPitch;
        PitchLimits = other.PitchLimits;
        LeftMargin = other.LeftMargin;
        RightMargin = other.RightMargin;
        Parity = other.Parity;
        PitchStep = other.PitchStep;
        StaggeredEnds = other.StaggeredEnds;
        Ends = other.Ends;
        Centre = other.Centre;
        CentreWidth = other.CentreWidth;
    }

    internal static Fitting Default { get; } = new();

    internal double? NominalPitch { get; private init; }
    internal (double Min, double Max)? PitchLimits { get; private init; }
    internal double LeftMargin { get; private init; }
    internal double RightMargin { get; private init; }
    internal RepeatParity Parity { get; private init; }
    internal double? PitchStep { get; private init; }
    internal StaggeredEnds StaggeredEnds { get; private init; }
    internal EndRule Ends { get; private init; }
    internal Pattern? Centre { get; private init; }
    internal double CentreWidth { get; private init; }

    /// <summary>Returns a fitting that aims at the given pitch instead of the band's own.</summary>
    /// <param name="nominal">Length of one repeat in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pitch is not positive.</exception>
    [Pure]
    public Fitting Pitch(double nominal) => new(this) { NominalPitch = Guard.Positive(nominal) };

    /// <summary>Returns a fitting whose pitch stays within limits. Default: within a third of the nominal pitch.</summary>
    /// <param name="min">Shortest repeat in mm.</param>
    /// <param name="max">Longest repeat in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is not positive, or the longest is under the shortest.</exception>
    [Pure]
    public Fitting PitchBetween(double min, double max)
    {
        Guard.Positive(min);
        return new(this) { PitchLimits = (min, Guard.Within(max, min, Guard.MaxSize)) };
    }

    /// <summary>Returns a fitting that leaves the same length uncarved at both ends.</summary>
    /// <param name="margin">In mm, 0 or more.</param>
    [Pure]
    public Fitting EndMargins(double margin) => EndMargins(margin, margin);

    /// <summary>Returns a fitting that leaves the given lengths uncarved at the ends.</summary>
    /// <param name="left">In mm, 0 or more.</param>
    /// <param name="right">In mm, 0 or more.</param>
    [Pure]
    public Fitting EndMargins(double left, double right) =>
        new(this) { LeftMargin = Guard.NotNegative(left), RightMargin = Guard.NotNegative(right) };

    /// <summary>Returns a fitting with an odd number of repeats, so that one stands on the centre line of the carved length.</summary>
    [Pure]
    public Fitting RepeatOnCentre() => new(this) { Parity = RepeatParity.Odd };

    /// <summary>Returns a fitting with an even number of repeats, so that two meet on the centre line of the carved length.</summary>
    [Pure]
    public Fitting GapOnCentre() => new(this) { Parity = RepeatParity.Even };

    /// <summary>Returns a fitting with a motif in the middle and equal bands left and right of it, mirrored.</summary>
    /// <param name="motif">The motif, drawn about the origin; its origin comes to lie on the middle of the band.</param>
    /// <param name="width">Length in mm that the bands leave free for it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not positive.</exception>
    /// <exception cref="PatternException">The motif is wider than that.</exception>
    [Pure]
    public Fitting CentreMotif(Pattern motif, double width)
    {
        Guard.NotNull(motif);
        Guard.Positive(width);
        if (motif.Extents is { } drawn)
        {
            var reach = 2 * Math.Max(-drawn.Min.X, drawn.Max.X);
            if (reach > width + Tolerance.ForExtent(width).Merge)
                throw new PatternException(
                    $"The centre motif reaches {Guard.Text(reach / 2)} mm from its origin, more than half of the {Guard.Text(width)} mm left free for it.",
                    remedies: [$"a width of at least {Guard.Text(reach)} mm", "a smaller motif"]
                );
        }
        return new(this) { Centre = motif, CentreWidth = width };
    }

    /// <summary>Returns a fitting whose pitch is a whole number of steps; what is left over is shared by the end margins.</summary>
    /// <param name="step">In mm: 0.5 allows 7.5, 8, 8.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive.</exception>
    [Pure]
    public Fitting PitchOnGrid(double step) => new(this) { PitchStep = Guard.Positive(step) };

    /// <summary>Returns a fitting whose staggered rows end as given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public Fitting StaggeredRows(StaggeredEnds ends) =>
        new(this) { StaggeredEnds = Guard.Defined(ends) };

    /// <summary>Returns a fitting whose ends must be mirror images; a band without an upright mirror is refused.</summary>
    [Pure]
    public Fitting MirroredEnds() => new(this) { Ends = EndRule.Mirrored };

    /// <summary>Returns a fitting whose ends must match by half a turn; a band without half turns is refused.</summary>
    [Pure]
    public Fitting HalfTurnEnds() => new(this) { Ends = EndRule.HalfTurn };

    /// <summary>
    /// Returns a fitting whose right half is the mirror image of the left: an even number of repeats, turned round at the
    /// middle. A leaning chip that would straddle the middle is left out.
    /// </summary>
    [Pure]
    public Fitting TurnedAtMiddle() => new(this) { Ends = EndRule.TurnedAtMiddle };

    /// <summary>
    /// Returns what this asks of the length between two mitres, where the ends are cut by the mitres and so match: the
    /// number of repeats only. A side that begins with the middle of a repeat has the other kind of place in its middle.
    /// </summary>
    /// <param name="phase">What lies on the mitres: 0 for the place where two repeats meet, 1 for the middle of a repeat.</param>
    /// <param name="turned">Whether the band turns round at the middle, where a gap is best.</param>
    internal Fitting InMitre(int phase, bool turned)
    {
        var gap = phase == 0 ? RepeatParity.Even : RepeatParity.Odd;
        var repeat = phase == 0 ? RepeatParity.Odd : RepeatParity.Even;
        var parity = Parity switch
        {
            _ when Centre is not null => RepeatParity.Any,
            RepeatParity.Odd => repeat,
            RepeatParity.Even => gap,
            _ => turned ? gap : RepeatParity.Any,
        };
        return new(this) { Parity = parity, Ends = EndRule.AsTheyCome };
    }

    /// <summary>Returns the fitting for one pitch for several lengths, which has narrower limits of its own if none are given.</summary>
    internal Fitting ForSharedPitch(TriangleBand band)
    {
        if (PitchLimits is not null)
            return this;
        var nominal = NominalFor(band);
        return PitchBetween(nominal * (1 - SharedLimit), nominal * (1 + SharedLimit));
    }

    /// <summary>The pitch aimed at for a band.</summary>
    internal double NominalFor(TriangleBand band) => NominalPitch ?? band.NominalPitch;

    /// <summary>The shortest and the longest pitch allowed for a band.</summary>
    internal (double Min, double Max) LimitsFor(TriangleBand band) =>
        PitchLimits ?? (NominalFor(band) * 2 / 3, NominalFor(band) * 4 / 3);

    /// <summary>What a length to fill asks of the pitch.</summary>
    internal PitchQuestion Ask(double length, TriangleBand band, RepeatParity parity, double extra)
    {
        var (min, max) = LimitsFor(band);
        return new(length, NominalFor(band), min, max, parity, extra);
    }
}

/// <summary>Which numbers of repeats are allowed.</summary>
internal enum RepeatParity
{
    Any,
    Odd,
    Even,
}

/// <summary>What is asked of the ends.</summary>
internal enum EndRule
{
    AsTheyCome,
    Mirrored,
    HalfTurn,
    TurnedAtMiddle,
}
