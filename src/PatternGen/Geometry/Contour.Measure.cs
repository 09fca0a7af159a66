namespace PatternGen.Geometry;

public sealed partial class Contour
{
    /// <summary>Area in mm², exact, positive when counter-clockwise.</summary>
    /// <remarks>Shoelace formula about the first corner, plus the circular segment of each arc.</remarks>
    public double SignedArea
    {
        get
        {
            var origin = Span[0].Point;
            double twice = 0;
            double bulges = 0;
            foreach (var segment in Segments)
            {
                twice += (segment.Start - origin).Cross(segment.End - origin);
                bulges += segment.SegmentArea;
            }
            return twice / 2 + bulges;
        }
    }

    /// <summary>Area in mm², whatever the direction.</summary>
    public double Area => Math.Abs(SignedArea);

    /// <summary>Whether the ring runs counter-clockwise.</summary>
    public bool IsCounterClockwise => SignedArea > 0;

    /// <summary>Centre of gravity of the area, exact.</summary>
    /// <exception cref="InvalidOperationException">The ring encloses no area.</exception>
    public Point Centroid
    {
        get
        {
            var origin = Span[0].Point;
            double area = 0;
            var moment = Vector.Zero;
            foreach (var segment in Segments)
            {
                var (a, b) = (segment.Start - origin, segment.End - origin);
                var triangle = a.Cross(b) / 2;
                var cap = segment.SegmentArea;
                area += triangle + cap;
                moment += (a + b) * (triangle / 3) + (a + b) * (cap / 2);
                // The cap lies to the right of the chord for a positive bulge.
                if (!segment.IsLine)
                    moment -= segment.Chord.Unit().Left * segment.SegmentMoment;
            }
            return area != 0
                ? origin + moment / area
                : throw new InvalidOperationException($"The contour at {origin} encloses no area.");
        }
    }

    /// <summary>Centre of gravity of what rings enclose together, holes clockwise.</summary>
    internal static Point CentroidOf(IReadOnlyList<Contour> rings)
    {
        var origin = rings[0].Span[0].Point;
        double area = 0;
        var moment = Vector.Zero;
        foreach (var ring in rings)
        {
            var signed = ring.SignedArea;
            area += signed;
            moment += (ring.Centroid - origin) * signed;
        }
        return origin + moment / area;
    }
}
