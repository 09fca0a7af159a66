namespace PatternGen.Geometry;

public sealed partial class Region
{
    /// <summary>Area in mm², exact, holes taken off; 0 for the empty region.</summary>
    public double Area => _contours.Sum(contour => contour.SignedArea);

    /// <summary>Length of all rings together, holes included, in mm.</summary>
    public double Length => _contours.Sum(contour => contour.Length);

    /// <summary>The smallest upright rectangle that holds the region.</summary>
    /// <exception cref="InvalidOperationException">The region is empty.</exception>
    public Extents Extents
    {
        get
        {
            ThrowIfEmpty("extents");
            var extents = _contours[0].Extents;
            foreach (var contour in _contours)
                extents = extents.Including(contour.Extents);
            return extents;
        }
    }

    /// <summary>Centre of gravity of the area, exact.</summary>
    /// <exception cref="InvalidOperationException">The region is empty.</exception>
    public Point Centroid
    {
        get
        {
            ThrowIfEmpty("centre of gravity");
            return Contour.CentroidOf(_contours);
        }
    }

    /// <summary>Returns whether a point lies inside, outside or on an edge; the edge of a hole is an edge too.</summary>
    /// <remarks>On the edge means within the merge distance of the tolerance for the region's extents.</remarks>
    public Containment Locate(Point point)
    {
        if (IsEmpty)
            return Containment.Outside;
        var extents = Extents;
        var merge = Tolerance.For(extents).Merge;
        if (!extents.Grown(merge).Contains(point))
            return Containment.Outside;
        var turns = 0;
        foreach (var contour in _contours)
        {
            if (contour.DistanceTo(point) <= merge)
                return Containment.OnEdge;
            turns += Winding.Of(contour, point);
        }
        return turns != 0 ? Containment.Inside : Containment.Outside;
    }

    /// <summary>Returns whether a point lies inside or on an edge.</summary>
    public bool Contains(Point point) => Locate(point) != Containment.Outside;

    private void ThrowIfEmpty(string what)
    {
        if (IsEmpty)
            throw new InvalidOperationException(
                $"An empty region has no {what}; ask IsEmpty first."
            );
    }
}
