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

    /// <summary>Returns the border mitred at the corners, which is the default.</summary>
    /// <remarks>
    /// Neighbouring sides run on to the line that halves the corner and are mirror images in it. Whether the place where two
    /// repeats meet or the middle of a repeat lies there is chosen so that least is cut off the chips. What of a chip lies
    /// beyond is cut off along the mitre, where it shares a ridge with its mirror image; corners within an eighth of the pitch
    /// are drawn onto the mitre, since the pitch is seldom just what the angle asks; and what would be less than two fifths
    /// as deep as a whole chip is left out. With a pitch twice its row's height a square corner needs no cut.
    /// </remarks>
    [Pure]
    public FrameBorder Mitred() => With(_design with { Corner = FrameCorner.Mitre, Motif = null });

    /// <summary>Returns the border with a motif in each corner, where the bands stop.</summary>
    /// <param name="motif">
    /// The motif, drawn about the origin, which comes to lie where the middle of the bands meets the line that halves the
    /// corner. Every second one is seen in a mirror, unless the band runs round one way.
    /// </param>
    /// <param name="size">Side of the block that is kept free for it, in mm; the width of the members if not given.</param>
    /// <param name="margin">Ground between the block and the bands in mm, 0 by default.</param>
    /// <param name="turn">How the motifs are turned; to the corner by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative, or the block has no size.</exception>
    [Pure]
    public FrameBorder Corners(
        Pattern motif,
        double? size = null,
        double margin = 0,
        FrameTurn turn = FrameTurn.ToTheCorner
    ) =>
        With(
            _design with
            {
                Corner = FrameCorner.Block,
                Motif = Guard.NotNull(motif),
                BlockSize = size is { } side ? Guard.Positive(side, nameof(size)) : null,
                Margin = Guard.NotNegative(margin),
                MotifTurn = Guard.Defined(turn),
            }
        );

    /// <summary>
    /// Returns the border with a compass drawing in each corner: its petals carved if it has any, else all that may be
    /// carved. What stands upright in it points to the corner.
    /// </summary>
    /// <inheritdoc cref="Corners(Pattern, double?, double, FrameTurn)"/>
    [Pure]
    public FrameBorder Corners(
        CompassDrawing motif,
        double? size = null,
        double margin = 0,
        FrameTurn turn = FrameTurn.ToTheCorner
    ) => Corners(PetalsOf(Guard.NotNull(motif)), size, margin, turn);

    /// <summary>Returns the border with a corner piece of the band's own: the rules mitred, each cell between them halved by its diagonal.</summary>
    /// <remarks>
    /// A band with one row has two triangles in each corner that share the mitre as a ridge; one with two rows has a star of
    /// eight triangles in a square corner.
    /// </remarks>
    [Pure]
    public FrameBorder Wrapped() =>
        With(_design with { Corner = FrameCorner.Wrapped, Motif = null });

    /// <summary>Returns the border butted: two sides run through to the ends of the piece, and the other two stop against them.</summary>
    /// <param name="through">Which run through; the upright ones by default.</param>
    /// <param name="margin">
    /// Ground in mm that all sides leave at their ends. By default those that run through leave as much as lies between the
    /// band and the long edge, and the others none before the joint, or before the band that they stop at if it is one board.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    /// <exception cref="PatternException">The frame is no rectangle.</exception>
    [Pure]
    public FrameBorder Butted(FrameThrough through = FrameThrough.Upright, double? margin = null)
    {
        if (!Frame.Outline.IsRectangle)
            throw new PatternException(
                "Two sides run through and two stop against them in a rectangle only.",
                remedies: ["mitred corners (Mitred)", "a motif in each corner (Corners)"]
            );
        return With(
            _design with
            {
                Corner = FrameCorner.Butt,
                Motif = null,
                Through = Guard.Defined(through),
                Margin = margin is { } free ? Guard.NotNegative(free, nameof(margin)) : null,
            }
        );
    }

    /// <summary>Returns the border bent round the corners.</summary>
    /// <remarks>
    /// All arcs of a corner have one centre. The repeats go all round, so many that the whole is symmetric if the band is:
    /// about both centre lines of a rectangle, and about the diagonals of a square, too. A leaning band runs round one way.
    /// </remarks>
    /// <param name="radius">
    /// Radius at the outer edge in mm, to which the wood itself need not be rounded; that of the wood if not given. A band 12 mm
    /// high, 5 mm from the edge, bends round a radius of 40 mm with 23 mm at its inner rule.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive.</exception>
    /// <exception cref="PatternException">No radius is given, and the wood has square corners; or the sides are too short for it.</exception>
    [Pure]
    public FrameBorder Bent(double? radius = null)
    {
        if (radius is null && Frame.CornerRadius == 0)
            throw new PatternException(
                "A band bends round a radius, but the corners of this frame have none.",
                remedies: ["a radius (Bent(40))", "a frame with rounded corners (Rounded)"]
            );
        if (radius is { } given)
            Frame.RefuseRadius(Guard.Positive(given, nameof(radius)));
        return With(_design with { Corner = FrameCorner.Bent, Motif = null, Radius = radius });
    }

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
            _design.WithLast(ring with { Fitting = Guard.NotNull(describe(ring.Fitting)) })
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
                        Frame.Outline.IsRectangle,
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
