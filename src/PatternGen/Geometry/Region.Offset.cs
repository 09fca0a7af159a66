namespace PatternGen.Geometry;

public sealed partial class Region
{
    /// <summary>Returns the area within a distance of this region, or what is left of it farther in.</summary>
    /// <param name="distance">In mm: positive grows the region and narrows its holes, negative shrinks it and widens them.</param>
    /// <param name="join">How corners that open are rounded; <see cref="OffsetJoin.Round"/> by default.</param>
    /// <returns>A region that may have more parts or fewer, or be empty. Arcs stay arcs; what is narrower than the merge distance is left out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not finite, or more than 1 km.</exception>
    /// <exception cref="PatternException">The outline crosses itself, so that its inside is not clear.</exception>
    public Region Offset(double distance, OffsetJoin join = default)
    {
        Guard.Within(distance, -Guard.MaxSize, Guard.MaxSize);
        if (IsEmpty)
            return this;
        // First of all, so that it does not hang on the distance whether the outline is refused.
        ThrowIfCrossing("An outline that crosses itself has no parallel.");
        var extents = Extents;
        // No circle of this radius fits into the extents.
        if (-2 * distance >= Math.Min(extents.Width, extents.Height))
            return Empty;
        var tolerance = Tolerance.For(extents.Grown(Math.Max(0, distance)));
        if (Math.Abs(distance) <= tolerance.Merge)
            return this;
        return new(RegionOffset.Rings(_contours, distance, join, tolerance));
    }

    /// <summary>Returns what is left of this region farther in than a distance; holes get wider by it.</summary>
    /// <param name="distance">In mm, 0 or more.</param>
    /// <param name="join">How corners that open are rounded; <see cref="OffsetJoin.Round"/> by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative, not finite, or more than 1 km.</exception>
    /// <exception cref="PatternException">The outline crosses itself, so that its inside is not clear.</exception>
    public Region Inset(double distance, OffsetJoin join = default) =>
        Offset(-Guard.NotNegative(distance), join);

    /// <summary>Inside a ring that crosses itself, or two that cross, it is not said what lies in the region.</summary>
    private void ThrowIfCrossing(string consequence)
    {
        foreach (var contour in _contours)
            ThrowAtCrossing(contour.SelfIntersections());
        VisitTouchingRings(
            (first, second) => ThrowAtCrossing(_contours[first].Intersections(_contours[second]))
        );

        void ThrowAtCrossing(IReadOnlyList<RunContact> contacts)
        {
            foreach (var contact in contacts)
                if (contact.Kind == ContactKind.Crossing)
                    throw new PatternException(
                        consequence,
                        contact.Point,
                        ["an outline without crossings; Validate tells where they are"]
                    );
        }
    }
}
