using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class FrameBorder
{
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
}
