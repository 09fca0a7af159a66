namespace PatternGen.Geometry;

public sealed partial class Contour
{
    /// <summary>Returns the area within a distance of this contour's area, or what is left of it farther in.</summary>
    /// <param name="distance">
    /// In mm: positive grows the area, negative shrinks it, whatever the direction of the ring. A square of side 10 offset by
    /// -2 is the square of side 6.
    /// </param>
    /// <param name="join">How corners that open are rounded; <see cref="OffsetJoin.Round"/> by default.</param>
    /// <returns>A region, since the result may split or have holes; it is empty if nothing is left. Arcs stay arcs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not finite, or more than 1 km.</exception>
    /// <exception cref="PatternException">The contour crosses itself, so that its inside is not clear.</exception>
    public Region Offset(double distance, OffsetJoin join = default) =>
        new Region(this).Offset(distance, join);

    /// <summary>Returns what is left of this contour's area farther in than a distance.</summary>
    /// <param name="distance">In mm, 0 or more. Inset by 2, a square of side 10 is the square of side 6.</param>
    /// <param name="join">How corners that open are rounded; <see cref="OffsetJoin.Round"/> by default.</param>
    /// <returns>As for <see cref="Offset"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative, not finite, or more than 1 km.</exception>
    /// <exception cref="PatternException">The outline crosses itself, so that its inside is not clear.</exception>
    public Region Inset(double distance, OffsetJoin join = default) =>
        Offset(-Guard.NotNegative(distance), join);
}
