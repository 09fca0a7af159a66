using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band carved round a ring: a pattern with the rules as circles or arcs, the chips and the disc, if there is one.</summary>
/// <remarks>
/// <para>
/// The band is redrawn in polar form, never stretched: rules are arcs round the centre, uprights radii, and each repeat
/// spans the same angle, computed from its number, so that round a whole ring the last one meets the first without a
/// seam. Staggered rows run round without half chips. All chips of a row are one shape, turned. Stab-cut chips keep three
/// sides, the one across from the tip straight: a chord of its rule.
/// </para>
/// <para>
/// Facing outwards, the upper edge of the band is its outer edge and the band runs clockwise, as one reads on a clock;
/// facing inwards the upper edge is the inner one and it runs counter-clockwise. It is never a mirror image.
/// </para>
/// <para>
/// The fit is worked out when it is first needed, so settings may come in any order; an impossible one throws a
/// <see cref="PatternException"/> then. Each method returns a changed copy. Immutable and safe to share between threads.
/// </para>
/// </remarks>
public sealed class RingBorder : Pattern
{
    private readonly Lazy<(BentBand Bent, BandPlan Plan)> _solved;

    internal RingBorder(Ring ring, TriangleBand band)
    {
        Ring = ring;
        Band = band;
        _solved = new(Solve);
    }

    private RingBorder(RingBorder other)
        : this(other.Ring, other.Band)
    {
        IsFacingIn = other.IsFacingIn;
        Fitting = other.Fitting;
        Style = other.Style;
    }

    /// <summary>The ring.</summary>
    public Ring Ring { get; }

    /// <summary>The band.</summary>
    public TriangleBand Band { get; }

    /// <summary>Whether the upper edge of the band is its inner one. Default no.</summary>
    public bool IsFacingIn { get; private init; }

    /// <summary>What becomes of straight slanted sides. Default <see cref="BentSides.Straight"/>.</summary>
    public BentSides Sides => Style.Sides;

    /// <summary>How far a side that follows the curve may be off, in mm. Default 0.01.</summary>
    public double Accuracy => Style.Accuracy;

    /// <summary>The line along the band on which the pitch is measured. Default <see cref="BandLine.Middle"/>.</summary>
    public BandLine PitchLine => Style.PitchLine;

    /// <summary>Radius in mm of the circle on which the pitch is measured.</summary>
    public double PitchRadius => RadiusAt(Style.Measured(Band));

    /// <summary>Radii of the band's rules in mm, in the order of <see cref="TriangleBand.Rules"/>: outwards, or inwards where it faces in.</summary>
    public IReadOnlyList<double> Radii => [.. Band.Rules.Select(RadiusAt)];

    /// <summary>How the band was fitted; lengths are measured on <see cref="PitchRadius"/>.</summary>
    /// <exception cref="PatternException">No fit is possible; the message says what would work.</exception>
    public Fit Fit => _solved.Value.Plan.Fit;

    /// <inheritdoc/>
    public override string? Name => Ring.Name;

    internal Fitting Fitting { get; private init; } = Fitting.Default;

    internal BentStyle Style { get; private init; } = BentStyle.Default;

    /// <summary>Distance from the ring's radius to the lowest rule, positive to the left of travel.</summary>
    private double Offset => -Band.Height * (IsFacingIn ? Ring.OuterShare : 1 - Ring.OuterShare);

    /// <summary>Returns the border with the upper edge of the band inwards.</summary>
    [Pure]
    public RingBorder FacingIn() => new(this) { IsFacingIn = true };

    /// <summary>Returns the border with the upper edge of the band outwards.</summary>
    [Pure]
    public RingBorder FacingOut() => new(this) { IsFacingIn = false };

    /// <summary>Returns the border of an arc with the same length left uncarved at both ends.</summary>
    /// <param name="margin">In mm, 0 or more; 0 by default. Measured where the pitch is.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    [Pure]
    public RingBorder EndMargins(double margin) => Fitted(fitting => fitting.EndMargins(margin));

    /// <summary>Returns the border fitted as described.</summary>
    /// <param name="describe">
    /// Changes the fitting so far: <c>border.Fitted(f => f.Pitch(8))</c>. What concerns ends (margins, a centre motif, how
    /// ends match, a pitch on a grid) is for arcs; how staggered rows end is no matter round a whole ring.
    /// </param>
    [Pure]
    public RingBorder Fitted(Func<Fitting, Fitting> describe) =>
        new(this) { Fitting = Guard.NotNull(Guard.NotNull(describe)(Fitting), nameof(describe)) };

    /// <summary>Returns the border with straight slanted sides bent as given. Sides that are curved by the band follow the curve anyway.</summary>
    /// <param name="sides">What becomes of them.</param>
    /// <param name="accuracy">How far arcs that follow the curve may be off it, in mm, from 0.000001 to 1; 0.01 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values, or the accuracy is out of range.</exception>
    [Pure]
    public RingBorder WithSides(BentSides sides, double accuracy = 0.01) =>
        new(this) { Style = Style.With(sides, accuracy) };

    /// <summary>Returns the border with the pitch measured on another line along the band.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public RingBorder PitchOn(BandLine line) =>
        new(this) { Style = Style with { PitchLine = Guard.Defined(line) } };

    internal override IEnumerable<string> Facts(Wording words) =>
        [Ring.Title(words), Fit.InWords(words), words.PitchRound(PitchRadius)];

    private protected override PatternNode Draw()
    {
        // A ring too small for its band is refused as that, before any disc is asked for.
        var (bent, plan) = _solved.Value;
        RefuseOffTheDisc();
        return GroupNode.Of(Disc(), bent.Draw(plan));
    }

    private (BentBand, BandPlan) Solve()
    {
        // Left of a clockwise walk is outside.
        var (from, sweep) = IsFacingIn
            ? (Ring.Start, Ring.Sweep)
            : (Ring.Start + (Ring.IsWhole ? Angle.Zero : Ring.Sweep), -Ring.Sweep);
        var bent = BentBand.Round(Ring.Radius, from, sweep, Band, Offset, Fitting, Style);
        return (bent, bent.Solve());
    }

    private double RadiusAt(double height) =>
        Ring.Radius + (IsFacingIn ? -1 : 1) * (Offset + height);

    private MotifNode Disc() =>
        Ring.DiscRadius is { } radius
            ? new()
            {
                Stock =
                [
                    new Circle(Point.Origin, radius).ToContour(),
                    .. Ring.HoleRadius > 0
                        ? (Contour[])
                            [new Circle(Point.Origin, Ring.HoleRadius).ToContour().Reversed()]
                        : [],
                ],
            }
            : MotifNode.Empty;

    private void RefuseOffTheDisc()
    {
        if (Ring.DiscRadius is not { } radius)
            return;
        var (inner, outer) = (Radii.Min(), Radii.Max());
        var rounding = Tolerance.ForExtent(radius).Merge;
        if (outer > radius + rounding)
            throw new PatternException(
                $"The outer edge of the band has a radius of {Guard.Text(outer)} mm, but the disc only {Guard.Text(radius)} mm.",
                new(0, outer),
                [
                    $"a disc of at least {Guard.Text(outer)} mm radius",
                    $"a ring of at most {Guard.Text(Ring.Radius - outer + radius)} mm radius",
                ]
            );
        if (inner < Ring.HoleRadius - rounding)
            throw new PatternException(
                $"The inner edge of the band has a radius of {Guard.Text(inner)} mm, but the hole of the disc {Guard.Text(Ring.HoleRadius)} mm.",
                new(0, inner),
                [
                    $"a hole of at most {Guard.Text(inner)} mm radius",
                    $"a ring of at least {Guard.Text(Ring.Radius - inner + Ring.HoleRadius)} mm radius",
                ]
            );
    }
}
