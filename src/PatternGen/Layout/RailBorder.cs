using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A rail with a band fitted along it: a pattern with the rail's outline, the ruled lines and the chips.</summary>
/// <remarks>
/// The fit is worked out when it is first needed, so settings may come in any order; an impossible one throws a
/// <see cref="PatternException"/> then. Immutable and safe to share between threads.
/// </remarks>
public sealed class RailBorder : Pattern
{
    private readonly Func<double>? _pitch;
    private readonly Lazy<BandPlan> _plan;

    internal RailBorder(
        Rail rail,
        TriangleBand band,
        double fromEdge,
        Fitting fitting,
        Func<double>? pitch = null
    )
    {
        Rail = rail;
        Band = band;
        FromEdge = fromEdge;
        Fitting = fitting;
        _pitch = pitch;
        _plan = new(Solve);
    }

    /// <summary>The rail.</summary>
    public Rail Rail { get; }

    /// <summary>The band.</summary>
    public TriangleBand Band { get; }

    /// <summary>Height of the band's lowest rule over the lower edge, in mm.</summary>
    internal double FromEdge { get; }

    /// <summary>What was asked of the fit.</summary>
    internal Fitting Fitting { get; }

    /// <summary>The pitch that the rails of its set share; null if it is fitted by itself.</summary>
    internal double? SharedPitch => _pitch?.Invoke();

    /// <summary>How the band was fitted.</summary>
    /// <exception cref="PatternException">No fit is possible; the message gives the nearest lengths and pitches that work.</exception>
    public Fit Fit => _plan.Value.Fit;

    /// <inheritdoc/>
    public override string? Name => Rail.Name;

    /// <summary>Returns the border with the same length left uncarved at both ends.</summary>
    /// <param name="margin">In mm, 0 or more; 0 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    [Pure]
    public RailBorder EndMargins(double margin) => Fitted(fitting => fitting.EndMargins(margin));

    /// <summary>Returns the border fitted as described.</summary>
    /// <param name="describe">
    /// Changes the fitting so far: <c>border.Fitted(f => f.Pitch(8).PitchBetween(7.5, 8.5).RepeatOnCentre())</c>.
    /// </param>
    /// <remarks>A border taken out of a set of rails leaves the set: it is then fitted by itself.</remarks>
    [Pure]
    public RailBorder Fitted(Func<Fitting, Fitting> describe) =>
        new(Rail, Band, FromEdge, Guard.NotNull(describe)(Fitting));

    internal override IEnumerable<string> Facts(Wording words) =>
        [
            Name is { } name
                ? $"{name}, {words.Size(Rail.Length, Rail.Width)}"
                : words.Rail(Rail.Length, Rail.Width),
            Fit.InWords(words),
        ];

    private protected override PatternNode Draw()
    {
        RefuseCentreOffTheRail();
        var drawing = new BandDrawing(Band, Fitting, _plan.Value).Draw(0, Rail.Length);
        // A rail is a piece of wood for itself, and its grain runs with it.
        return new MemberNode(
            GroupNode.Of(Rail.Draw(), new PlacedNode(drawing, Transform.Move(0, FromEdge))),
            MemberGrain.AlongX
        );
    }

    private void RefuseCentreOffTheRail()
    {
        if (Fitting.Centre?.Extents is not { } motif)
            return;
        var middle = FromEdge + Band.Height / 2;
        var room = Math.Min(middle, Rail.Width - middle);
        var reach = Math.Max(-motif.Min.Y, motif.Max.Y);
        if (reach > room + Tolerance.ForExtent(Rail.Width).Merge)
            throw new PatternException(
                $"The centre motif reaches {Guard.Text(reach)} mm from the middle of the band, but the edge of the rail is {Guard.Text(room)} mm away.",
                new(_plan.Value.Middle, middle),
                [$"a motif that reaches at most {Guard.Text(room)} mm up and down", "a wider rail"]
            );
    }

    private BandPlan Solve()
    {
        var solver = new FitSolver(Rail.Length, Band, Fitting);
        return SharedPitch is { } pitch ? solver.AtPitch(pitch) : solver.Solve();
    }
}
