namespace PatternGen.Geometry;

/// <summary>An area bounded by contours: outer rings counter-clockwise, holes clockwise. It may have several parts, or none.</summary>
/// <remarks>
/// What lies inside an odd number of rings belongs to the region. Rings may touch in points but not cross: Validate says
/// whether they do. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class Region
{
    private readonly Contour[] _contours;
    private readonly RegionPart[] _parts;

    /// <inheritdoc cref="Region(IEnumerable{Contour})"/>
    public Region(params Contour[] contours)
        : this((IEnumerable<Contour>)contours) { }

    /// <summary>Creates a region, working out which rings are outer ones and which are holes in which.</summary>
    /// <param name="contours">The rings in any order and direction; each is turned as its place asks. None gives the empty region.</param>
    /// <exception cref="ArgumentNullException">There is no list, or an entry is null.</exception>
    public Region(IEnumerable<Contour> contours)
    {
        _parts = RegionNesting.Parts([
            .. Guard.NotNull(contours).Select(contour => Guard.NotNull(contour)),
        ]);
        _contours = [.. _parts.SelectMany(part => part.Holes.Prepend(part.Outer))];
    }

    private Region(RegionPart[] parts)
    {
        _parts = parts;
        _contours = [.. parts.SelectMany(part => part.Holes.Prepend(part.Outer))];
    }

    /// <summary>The region without any part.</summary>
    public static Region Empty { get; } = new(Array.Empty<RegionPart>());

    /// <summary>All rings: each outer one followed by its holes.</summary>
    public IReadOnlyList<Contour> Contours => _contours;

    /// <summary>The connected parts, each an outer ring with its holes, in the order of their outer rings.</summary>
    public IReadOnlyList<RegionPart> Parts => _parts;

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => _parts.Length == 0;

    /// <summary>Returns the outer ring that encloses most, holes not counted; the first of several.</summary>
    /// <exception cref="InvalidOperationException">The region is empty.</exception>
    public Contour Largest()
    {
        if (IsEmpty)
            throw new InvalidOperationException(
                "An empty region has no largest contour; ask IsEmpty first, or offset by less."
            );
        return _parts.MaxBy(part => part.Outer.Area)!.Outer;
    }

    /// <summary>Returns the region moved, turned, mirrored or scaled; outer rings stay counter-clockwise.</summary>
    public Region Transformed(Transform transform)
    {
        return new([.. _parts.Select(Moved)]);

        RegionPart Moved(RegionPart part) =>
            new(MovedRing(part.Outer), [.. part.Holes.Select(MovedRing)]);

        Contour MovedRing(Contour ring)
        {
            var moved = ring.Transformed(transform);
            return transform.IsMirrored ? moved.Reversed() : moved;
        }
    }
}
