namespace PatternGen.Geometry;

public readonly partial record struct Segment
{
    /// <summary>Returns what this segment and another have in common, within the tolerance for their extents.</summary>
    public SegmentIntersection Intersect(Segment other) =>
        Intersect(other, Tolerance.For(Extents.Including(other.Extents)));

    /// <summary>Returns what this segment and another have in common.</summary>
    /// <param name="other">The other segment.</param>
    /// <param name="tolerance">
    /// Curves nearer than its merge distance touch; points nearer than that, or than its square root where the curves
    /// are tangent, are one.
    /// </param>
    /// <returns>The circles round (0, 0) and (2, 0) with radius 2 give (1, -√3) and (1, √3).</returns>
    public SegmentIntersection Intersect(Segment other, Tolerance tolerance)
    {
        if (!Extents.Grown(tolerance.Merge).Touches(other.Extents))
            return default;
        var contacts = new SegmentContacts(this, other, tolerance);
        contacts.AddEnds();
        return Finish(other, contacts);
    }

    /// <summary>
    /// What this segment and one half of a circle have in common. The half ends where the circle does not: its ends are no
    /// contacts, for next to a true one they would look like a second, or like the end of a stretch in common.
    /// </summary>
    internal SegmentIntersection IntersectHalf(Segment half, Tolerance tolerance)
    {
        if (!Extents.Grown(tolerance.Merge).Touches(half.Extents))
            return default;
        var contacts = new SegmentContacts(this, half, tolerance);
        contacts.AddEndsOfFirst();
        return Finish(half, contacts);
    }

    private SegmentIntersection Finish(Segment other, SegmentContacts contacts)
    {
        if (contacts.TryFindStretches(out var stretches))
            return stretches;
        AddCrossings(this, other, ref contacts);
        return contacts.ToIntersection();
    }

    /// <summary>
    /// Along the first segment, weight × side of the second is a polynomial of degree two in s, whether either is a line
    /// or an arc: a s² + b s + c. Its zeros are the crossings.
    /// </summary>
    private static void AddCrossings(Segment one, Segment other, ref SegmentContacts contacts)
    {
        var first = new ArcFrame(one);
        var second = new ArcFrame(other);
        if (!(first.Half > 0 && second.Half > 0))
            return;
        var offset = first.Middle - second.Middle;
        var gradient = second.Normal - second.Curvature * offset;
        var c = second.Side(first.Middle);
        var b = gradient.Dot(first.Tangent);
        var a =
            first.Curvature * first.Curvature * c / 4
            + first.Curvature / 2 * gradient.Dot(first.Normal)
            - second.Curvature / 2;
        if (!TryAddTangency(first, a, b, c, ref contacts))
            AddRoots(first, second, a, b, c, ref contacts);
    }

    /// <summary>Where the gap between the curves is least or greatest it is a distance to first order; within the merge distance they touch there.</summary>
    private static bool TryAddTangency(
        ArcFrame first,
        double a,
        double b,
        double c,
        ref SegmentContacts contacts
    )
    {
        var merge = contacts.Tolerance.Merge;
        var turning = -b / (2 * a);
        var within = Math.Clamp(turning, -first.Half, first.Half);
        // The gap grows as a s² from the turning place: so far along it stays within the merge distance. A turning place
        // at the far side of the circle has a weight without bound, so the weight is taken on the segment; where the
        // curves do not bend apart both sides are infinite.
        var spread = Math.Sqrt(merge * first.Weight(within) / Math.Abs(a));
        if (!(Math.Abs(turning - within) < spread))
            return false;
        if (!(Math.Abs(c - b * b / (4 * a)) <= merge * first.Weight(turning)))
            return false;
        contacts.AddTangency(first.At(within), 2 * spread);
        return true;
    }

    private static void AddRoots(
        ArcFrame first,
        ArcFrame second,
        double a,
        double b,
        double c,
        ref SegmentContacts contacts
    )
    {
        var discriminant = b * b - 4 * a * c;
        if (discriminant < 0)
            return;
        // The sum that does not cancel, then the other root from the product of both.
        var sum = -(b + Math.CopySign(Math.Sqrt(discriminant), b)) / 2;
        AddRoot(sum / a, ref contacts);
        AddRoot(c / sum, ref contacts);

        void AddRoot(double root, ref SegmentContacts found)
        {
            if (!double.IsFinite(root))
                return;
            var slope = 2 * a * root + b;
            var polished =
                slope == 0 ? root : root - second.Side(first.At(root)) * first.Weight(root) / slope;
            if (Math.Abs(polished) <= first.Half)
                found.AddCrossing(first.At(polished));
        }
    }
}
