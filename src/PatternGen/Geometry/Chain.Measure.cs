namespace PatternGen.Geometry;

public sealed partial class Chain
{
    /// <summary>Length along the run, in mm.</summary>
    public double Length => Segments.Sum(segment => segment.Length);

    /// <summary>The smallest upright rectangle that holds the run, arcs included.</summary>
    public Extents Extents
    {
        get
        {
            var extents = Extents.Of(Start);
            foreach (var segment in Segments)
                extents = extents.Including(segment.Extents);
            return extents;
        }
    }
}
