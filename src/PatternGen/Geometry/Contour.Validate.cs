namespace PatternGen.Geometry;

public sealed partial class Contour
{
    /// <summary>Returns whether the ring is sound: no doubled corner or spike, not crossing or touching itself, and with an area.</summary>
    /// <remarks>Within the merge distance of the tolerance for its extents. Both directions are sound: clockwise rings are holes.</remarks>
    public Validity Validate()
    {
        var tolerance = Tolerance;
        var flaws = new List<Flaw>();
        AddDoubledCorners(tolerance, flaws);
        foreach (var contact in SelfIntersections())
            flaws.Add(FlawAt(contact));
        if (Area <= tolerance.Merge * Length / 2)
            flaws.Add(new(FlawKind.NoArea, Span[0].Point, 0, "the ring encloses no area."));
        return new(flaws);
    }

    private void AddDoubledCorners(Tolerance tolerance, List<Flaw> flaws)
    {
        for (var i = 0; i < Count; i++)
        {
            var segment = At(i);
            if (tolerance.Same(segment.Start, segment.End))
                flaws.Add(
                    new(
                        FlawKind.DoubledCorner,
                        segment.Start,
                        i,
                        $"the corners {i} and {(i + 1) % Count} are one point."
                    )
                );
        }
    }

    private Flaw FlawAt(RunContact contact)
    {
        var (first, second) = (contact.SegmentOnFirst, contact.SegmentOnSecond);
        var (kind, reason) = contact.Kind switch
        {
            ContactKind.Crossing => (
                FlawKind.SelfCrossing,
                $"the ring crosses itself, in segments {first} and {second}."
            ),
            ContactKind.Touching => (
                FlawKind.SelfTouching,
                $"the ring touches itself, in segments {first} and {second}."
            ),
            _ when AreNeighbours(first, second) => (
                FlawKind.Spike,
                $"segments {first} and {second} run back along each other."
            ),
            _ => (FlawKind.SelfOverlapping, $"segments {first} and {second} run along each other."),
        };
        return new(kind, contact.Point, first, reason);
    }

    private bool AreNeighbours(int first, int second) =>
        Math.Abs(second - first) is 0 or 1 || Math.Abs(second - first) == Count - 1;
}
