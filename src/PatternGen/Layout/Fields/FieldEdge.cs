using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The edge that the chips of a field keep inside: the outline, less the border gap.</summary>
internal sealed class FieldEdge
{
    /// <summary>At most so many places are told apart on one side within one cell: far more than any outline has there.</summary>
    private const int MostCuts = 128;

    private readonly WindingIndex _windings;

    internal FieldEdge(Region region)
    {
        Region = region;
        Sides = [.. region.Contours.SelectMany(ring => ring.Segments)];
        Extents = region.Extents;
        Tolerance = Tolerance.For(Extents);
        _windings = new(Sides);
    }

    internal Region Region { get; }

    /// <summary>The sides of all rings, the field on their left.</summary>
    internal Segment[] Sides { get; }

    internal Extents Extents { get; }

    internal Tolerance Tolerance { get; }

    /// <summary>Whether a place off the edge lies inside.</summary>
    internal bool Surrounds(Point place) => _windings.At(place) != 0;

    /// <summary>Returns where rings lie that have an inside in common.</summary>
    /// <param name="rings">An outline and its holes.</param>
    /// <param name="inner">A place inside them, off their sides.</param>
    /// <param name="sides">Numbers of the sides of the edge that may cross them.</param>
    internal EdgePlace PlaceOf(ReadOnlySpan<Contour> rings, Point inner, List<int> sides)
    {
        foreach (var side in sides)
            if (Enters(rings, Sides[side]))
                return EdgePlace.Crossing;
        if (!Surrounds(inner))
            return EdgePlace.Outside;
        return PokesOut(rings, sides) ? EdgePlace.Crossing : EdgePlace.Inside;
    }

    /// <summary>
    /// A tip without an angle is no wider than the tolerance where it crosses the edge, long before it is no longer than
    /// that, so corners are asked too.
    /// </summary>
    private bool PokesOut(ReadOnlySpan<Contour> rings, List<int> sides)
    {
        foreach (var ring in rings)
        foreach (var corner in ring.Vertices)
            if (!Surrounds(corner.Point) && IsOff(corner.Point))
                return true;
        return false;

        bool IsOff(Point corner) =>
            sides.TrueForAll(side => Sides[side].DistanceTo(corner) > Tolerance.Merge);
    }

    /// <summary>
    /// Between two places where it meets the rings, a side is either inside or outside all the way, so that the middle
    /// between them tells; beside a ring by less than the tolerance it only touches.
    /// </summary>
    private bool Enters(ReadOnlySpan<Contour> rings, Segment side)
    {
        Span<double> cuts = stackalloc double[MostCuts];
        var length = side.Length;
        (cuts[0], cuts[1]) = (0, length);
        var count = 2;
        foreach (var ring in rings)
            for (var i = 0; i < ring.Count && count + 4 <= MostCuts; i++)
            {
                var meeting = side.Intersect(ring.At(i), Tolerance);
                for (var k = 0; k < meeting.PointCount; k++)
                    cuts[count++] = side.LengthAt(meeting.PointAt(k));
                for (var k = 0; k < meeting.StretchCount && count + 2 <= MostCuts; k++)
                {
                    cuts[count++] = side.LengthAt(meeting.StretchAt(k).Start);
                    cuts[count++] = side.LengthAt(meeting.StretchAt(k).End);
                }
            }
        cuts[..count].Sort();
        for (var k = 1; k < count; k++)
            if (
                cuts[k] - cuts[k - 1] > Tolerance.Merge
                && IsWellInside(rings, side.PointAt((cuts[k - 1] + cuts[k]) / 2))
            )
                return true;
        return false;
    }

    private bool IsWellInside(ReadOnlySpan<Contour> rings, Point place)
    {
        var turns = 0;
        foreach (var ring in rings)
            turns += Winding.Of(ring, place);
        if (turns == 0)
            return false;
        foreach (var ring in rings)
            if (ring.DistanceTo(place) <= Tolerance.Merge)
                return false;
        return true;
    }
}
