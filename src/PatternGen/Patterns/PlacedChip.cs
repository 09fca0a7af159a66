using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip as it passes through the tree: where it lies by now, and the shared shape it came from.</summary>
internal readonly ref struct PlacedChip
{
    /// <summary>A chip where its motif draws it.</summary>
    internal PlacedChip(ChipId id, ChipShape shape)
        : this(id, shape.Corners, shape, Transform.Identity) { }

    internal PlacedChip(
        ChipId id,
        ReadOnlySpan<Vertex> corners,
        ChipShape shape,
        Transform placement
    )
    {
        Id = id;
        Corners = corners;
        Shape = shape;
        Placement = placement;
    }

    internal ChipId Id { get; }

    /// <summary>The corners of all rings, as the shape numbers them.</summary>
    internal ReadOnlySpan<Vertex> Corners { get; }

    internal ChipShape Shape { get; }

    internal Transform Placement { get; }

    /// <summary>Counter-clockwise.</summary>
    internal ReadOnlySpan<Vertex> Outline => HasHoles ? Ring(0) : Corners;

    internal bool HasHoles => Shape.RingCount > 1;

    /// <summary>The outline and the holes together.</summary>
    internal int RingCount => Shape.RingCount;

    /// <summary>Returns the outline, 0, or one of the holes, from 1, which run clockwise.</summary>
    internal ReadOnlySpan<Vertex> Ring(int ring) => Corners[Shape.CornersOf(ring)];

    /// <summary>Copies the outline.</summary>
    internal Contour ToOutline() => ToContour(0);

    /// <summary>Copies the holes; most chips have none, and allocate nothing here.</summary>
    internal Contour[] ToHoles()
    {
        if (!HasHoles)
            return [];
        var holes = new Contour[RingCount - 1];
        for (var i = 0; i < holes.Length; i++)
            holes[i] = ToContour(i + 1);
        return holes;
    }

    private Contour ToContour(int ring) => new(Ring(ring).ToArray());
}
