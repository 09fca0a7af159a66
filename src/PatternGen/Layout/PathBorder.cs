using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band bent along a path of lines and arcs: a pattern with the ruled lines and the chips.</summary>
/// <remarks>
/// <para>
/// Rules are parallels of the path, arcs beside arcs of the same centre; uprights stand square on the path, as radii on
/// arcs. Repeats are equally long on the line that <see cref="PitchLine"/> names, and whole: round a closed path the last
/// one meets the first. A chip that lies over a joint of line and arc is bent piece by piece. Stab-cut
/// chips keep three sides, the one across from the tip straight. Whether the path comes near itself is for the inspection to say.
/// </para>
/// <para>
/// The fit is worked out when it is first needed, so settings may come in any order; an impossible one throws a
/// <see cref="PatternException"/> then. Each method returns a changed copy. Immutable and safe to share between threads.
/// </para>
/// </remarks>
public sealed class PathBorder : Pattern
{
    private readonly Lazy<(BentBand Bent, BandPlan Plan)> _solved;

    internal PathBorder(SegmentRun path, TriangleBand band, double offset)
    {
        Path = path;
        Band = band;
        Offset = offset;
        _solved = new(Solve);
    }

    private PathBorder(PathBorder other)
        : this(other.Path, other.Band, other.Offset)
    {
        Fitting = other.Fitting;
        Style = other.Style;
        Start = other.Start;
    }

    /// <summary>The path.</summary>
    public SegmentRun Path { get; }

    /// <summary>The band.</summary>
    public TriangleBand Band { get; }

    /// <summary>Distance in mm from the path to the lowest rule, positive to the left of travel; half the height to the right if not given.</summary>
    public double Offset { get; }

    /// <summary>What becomes of straight slanted sides. Default <see cref="BentSides.Straight"/>.</summary>
    public BentSides Sides => Style.Sides;

    /// <summary>How far a side that follows the curve may be off, in mm. Default 0.01.</summary>
    public double Accuracy => Style.Accuracy;

    /// <summary>The line along the band on which lengths are measured. Default <see cref="BandLine.Middle"/>.</summary>
    public BandLine PitchLine => Style.PitchLine;

    /// <summary>Where the first repeat begins round a closed path: distance along it in mm. Default 0, its first corner.</summary>
    public double Start { get; private init; }

    /// <summary>How the band was fitted.</summary>
    /// <exception cref="PatternException">No fit is possible; the message says what would work.</exception>
    public Fit Fit => _solved.Value.Plan.Fit;

    internal Fitting Fitting { get; private init; } = Fitting.Default;

    internal BentStyle Style { get; private init; } = BentStyle.Default;

    /// <summary>Returns the border with the same length left uncarved at both ends of an open path.</summary>
    /// <param name="margin">In mm, 0 or more; 0 by default. Measured where the pitch is.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    [Pure]
    public PathBorder EndMargins(double margin) => Fitted(fitting => fitting.EndMargins(margin));

    /// <summary>Returns the border fitted as described.</summary>
    /// <param name="describe">
    /// Changes the fitting so far: <c>border.Fitted(f => f.Pitch(8))</c>. What concerns ends (margins, a centre motif, how
    /// ends match, a pitch on a grid) is for open paths; how staggered rows end is no matter round a closed one.
    /// </param>
    [Pure]
    public PathBorder Fitted(Func<Fitting, Fitting> describe) =>
        new(this) { Fitting = Guard.NotNull(Guard.NotNull(describe)(Fitting), nameof(describe)) };

    /// <summary>Returns the border with straight slanted sides bent as given. Sides that are curved by the band follow the curve anyway.</summary>
    /// <param name="sides">What becomes of them.</param>
    /// <param name="accuracy">How far arcs that follow the curve may be off it, in mm, from 0.000001 to 1; 0.01 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values, or the accuracy is out of range.</exception>
    [Pure]
    public PathBorder WithSides(BentSides sides, double accuracy = 0.01) =>
        new(this) { Style = Style.With(sides, accuracy) };

    /// <summary>Returns the border with lengths measured on another line along the band.</summary>
    /// <param name="line">Repeats are equally long there; beside an arc, those farther in are shorter.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public PathBorder PitchOn(BandLine line) =>
        new(this) { Style = Style with { PitchLine = Guard.Defined(line) } };

    /// <summary>Returns the border with its first repeat begun elsewhere on a closed path.</summary>
    /// <param name="length">Distance along the path in mm, as for <see cref="SegmentRun.PointAt"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite.</exception>
    /// <exception cref="InvalidOperationException">The path is open.</exception>
    [Pure]
    public PathBorder StartingAt(double length)
    {
        Guard.Finite(length);
        return Path.IsClosed
            ? new(this) { Start = length }
            : throw new InvalidOperationException(
                "A band along an open path starts at its end; EndMargins leaves some of it free."
            );
    }

    internal override IEnumerable<string> Facts(Wording words) =>
        [words.PathBorder(Path.Length), Fit.InWords(words)];

    private protected override PatternNode Draw() => _solved.Value.Bent.Draw(_solved.Value.Plan);

    private (BentBand, BandPlan) Solve()
    {
        var bent = BentBand.Along(Path, Band, Offset, Fitting, Style, Start);
        return (bent, bent.Solve());
    }
}
