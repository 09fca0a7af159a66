namespace PatternGen.Geometry;

public abstract partial class SegmentRun
{
    /// <summary>Returns all places where this run meets another, in order along this one.</summary>
    /// <remarks>
    /// Within the tolerance for both together. A place at a corner is told once, not for each segment that meets there;
    /// a stretch in common is told once for each pair of segments, without its ends. The work grows about evenly with the
    /// number of segments.
    /// </remarks>
    public IReadOnlyList<RunContact> Intersections(SegmentRun other)
    {
        Guard.NotNull(other);
        var tolerance = Tolerance.For(Extents.Including(other.Extents));
        return new RunContactFinder(this, other, tolerance).Between();
    }

    /// <summary>Returns all places where the run meets itself, in order along it; its corners are none.</summary>
    /// <returns>For each place the smaller length along the run is the one on the first. A neighbour that doubles back overlaps.</returns>
    public IReadOnlyList<RunContact> SelfIntersections() =>
        new RunContactFinder(this, this, Tolerance).Within();

    /// <summary>Returns whether the run passes through itself; touching itself is not crossing.</summary>
    public bool CrossesItself() =>
        SelfIntersections().Any(contact => contact.Kind == ContactKind.Crossing);
}
