using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A frame with one or more bands carved round it: a pattern with the frame's outline, the ruled lines and the chips.</summary>
/// <remarks>
/// The fit is worked out when it is first needed, so settings may come in any order; an impossible one throws a
/// <see cref="PatternException"/> then. Rows of chips are numbered band by band from the outermost, side by side from the
/// first, row by row of the band. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class FrameBorder : Pattern
{
    private readonly FrameDesign _design;
    private readonly Lazy<FrameDrawing> _drawing;

    internal FrameBorder(Frame frame, FrameDesign design)
    {
        Frame = frame;
        _design = design;
        _drawing = new(() => new(frame, design));
    }

    /// <summary>The frame.</summary>
    public Frame Frame { get; }

    /// <summary>The bands, from the outermost.</summary>
    public IReadOnlyList<TriangleBand> Bands => [.. _design.Rings.Select(ring => ring.Band)];

    /// <summary>Distances in mm from the outer edge to the lowest rule of each band.</summary>
    public IReadOnlyList<double> FromEdge => [.. _design.Rings.Select(ring => ring.From)];

    /// <summary>How the bands turn the corners.</summary>
    public FrameCorner Corner => _design.Corner;

    /// <summary>How each side was fitted, band by band from the outermost.</summary>
    /// <exception cref="PatternException">No fit is possible; the message says what would work.</exception>
    public IReadOnlyList<SideFit> Fits => _drawing.Value.Fits;

    /// <inheritdoc/>
    public override string? Name => Frame.Name;

    internal FrameDesign Design => _design;

    /// <summary>Returns the border with one pitch for all sides of a band.</summary>
    /// <remarks>
    /// It is the one nearest to the nominal one that fills each side with whole repeats, or that leaves least over if there is
    /// none. What is left over goes to the middle of mitred sides, so that the corners stay alike, and to the ends of others.
    /// The limits are those of the fitting; if none are given, a tenth off the nominal pitch either way.
    /// </remarks>
    [Pure]
    public FrameBorder SamePitch() => With(_design with { SamePitch = true });

    /// <summary>
    /// Returns the border with a leaning band running round the frame one way. By default it turns round at the middle of
    /// each side, so that the chips have the mirrors of the frame.
    /// </summary>
    [Pure]
    public FrameBorder RunningRound() => With(_design with { Mirrored = false });

    /// <summary>Returns the border with the innermost band fitted as described, on all sides.</summary>
    /// <param name="describe">Changes the fitting so far: <c>border.Fitted(f => f.Pitch(8).GapOnCentre())</c>.</param>
    [Pure]
    public FrameBorder Fitted(Func<Fitting, Fitting> describe)
    {
        Guard.NotNull(describe);
        var ring = _design.Rings[^1];
        return With(
            _design.WithLast(
                ring with
                {
                    Fitting = Guard.NotNull(describe(ring.Fitting), nameof(describe)),
                }
            )
        );
    }

    /// <summary>Returns the border with another band inside the innermost one, treated alike at the corners.</summary>
    /// <param name="band">The band.</param>
    /// <param name="gap">Distance in mm from the highest rule of the band outside to its lowest one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gap is negative.</exception>
    /// <exception cref="PatternException">The members are not wide enough.</exception>
    [Pure]
    public FrameBorder Inside(TriangleBand band, double gap)
    {
        Guard.NotNull(band);
        var from = _design.Rings[^1].To + Guard.NotNegative(gap);
        Frame.Room(band, from);
        return With(_design with { Rings = [.. _design.Rings, new(band, from, Fitting.Default)] });
    }

    internal override IEnumerable<string> Facts(Wording words) =>
        [
            Name is { } name
                ? $"{name}, {words.Size(Frame.Width, Frame.Height)}"
                : Frame.Title(words),
            words.FrameCorners(Corner),
            .. FitsInWords(words),
        ];

    /// <summary>The fits, those sides together that are fitted alike.</summary>
    internal IEnumerable<string> FitsInWords(Wording words) =>
        Fits.GroupBy(fit => (fit.Band, Words: fit.InWords(words)))
            .OrderBy(alike => alike.Key.Band)
            .Select(alike =>
                words.FrameFit(
                    _design.Rings.Count > 1 ? alike.Key.Band : 0,
                    words.FrameSides(
                        [.. alike.Select(fit => fit.Side).Where(side => side > 0)],
                        Frame.Outline.HasNamedSides,
                        alike.Count() == Frame.SideCount
                    ),
                    alike.Key.Words
                )
            );

    /// <summary>What is carved of a drawing that nobody has chosen the parts of.</summary>
    internal static Pattern PetalsOf(CompassDrawing drawing) =>
        drawing.Parts.Any(part => part.IsPetal && !part.IsPlain)
            ? drawing.Carve(part => part.IsPetal)
            : drawing.Carve(_ => true);

    private protected override PatternNode Draw() => _drawing.Value.Root();

    /// <summary>The same border on a lid.</summary>
    internal FrameBorder OnLid() => new(Frame.Lid(), _design);

    /// <summary>The same border on a board that differs in its name.</summary>
    internal FrameBorder On(Frame board) => new(board, _design);

    private FrameBorder With(FrameDesign design) => new(Frame, design);
}
