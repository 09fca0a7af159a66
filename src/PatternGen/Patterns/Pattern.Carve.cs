using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

public abstract partial class Pattern
{
    /// <summary>Returns the pattern with every chip cut in the given way, whatever was said before.</summary>
    /// <param name="cut">
    /// The cut. The corner of a stab is one of the chip's <see cref="Chip.Shape"/>, so that all repeats of a chip, mirrored
    /// ones too, are stabbed at the same corner.
    /// </param>
    /// <exception cref="PatternException">A chip can't be stabbed so: it has other than three sides, or a curved one across from the apex.</exception>
    [Pure]
    public Pattern WithCut(ChipCut cut)
    {
        Guard.NotNull(cut);
        return WithCut(_ => cut);
    }

    /// <summary>Returns the pattern with every chip cut as chosen for its shape, whatever was said before.</summary>
    /// <param name="choose">
    /// Asked once for each shape that chips share, with its outline in the motif's own frame:
    /// <c>WithCut(shape => shape.Count == 3 ? ChipCut.Stabbed(2) : ChipCut.Walls)</c>.
    /// </param>
    /// <exception cref="ArgumentException">No cut is chosen.</exception>
    /// <exception cref="PatternException">A chip can't be stabbed so: it has other than three sides, or a curved one across from the apex.</exception>
    [Pure]
    public Pattern WithCut(Func<Contour, ChipCut> choose)
    {
        var recut = new Recut(Guard.NotNull(choose));
        return new DrawnPattern(recut.Of(Root), Name, Facts, new CutOrigin(this, recut.Chosen));
    }

    /// <summary>
    /// Returns the pattern as a piece of wood with a grain of its own, whatever the stock says. It turns with the pattern
    /// from then on.
    /// </summary>
    /// <param name="degrees">Direction of the grain, counter-clockwise from the x axis of the pattern as it is now; 0 by default.</param>
    /// <remarks>
    /// A rail needs it only where its grain does not run as the stock says, since the grain of a rail is measured from its
    /// length, however it is placed. What is said last holds: a frame sawn out of one board is
    /// <c>frame.WithGrain()</c>.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    [Pure]
    public Pattern WithGrain(double degrees = 0) => WithGrain(Angle.FromDegrees(degrees));

    /// <inheritdoc cref="WithGrain(double)"/>
    /// <param name="direction">Direction of the grain, counter-clockwise from the x axis of the pattern as it is now.</param>
    [Pure]
    public Pattern WithGrain(Angle direction) =>
        new DrawnPattern(
            new MemberNode(Root, MemberGrain.Own(direction)),
            Name,
            Facts,
            new GrainOrigin(this, direction)
        );
}
