namespace PatternGen.Geometry;

/// <summary>One connected part of a region: an outer ring and the holes in it.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed record RegionPart
{
    internal RegionPart(Contour outer, IReadOnlyList<Contour> holes)
    {
        Outer = outer;
        Holes = holes;
    }

    /// <summary>The outer ring, counter-clockwise.</summary>
    public Contour Outer { get; }

    /// <summary>The holes directly inside it, clockwise; empty if there are none.</summary>
    public IReadOnlyList<Contour> Holes { get; }

    /// <summary>Area in mm² without the holes.</summary>
    public double Area => Outer.Area - Holes.Sum(hole => hole.Area);

    /// <summary>Centre of gravity of the area, exact.</summary>
    internal Point Centroid => Contour.CentroidOf([Outer, .. Holes]);
}
