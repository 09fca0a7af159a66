using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip as it passes through the tree: where it lies by now, and the shared shape it came from.</summary>
internal readonly ref struct PlacedChip
{
    /// <summary>A chip where its motif draws it.</summary>
    internal PlacedChip(ChipId id, ChipShape shape)
        : this(id, shape.Corners, shape, Transform.Identity, default) { }

    private PlacedChip(
        ChipId id,
        ReadOnlySpan<Vertex> corners,
        ChipShape shape,
        Transform placement,
        MemberGrain grain
    )
    {
        Id = id;
        Corners = corners;
        Shape = shape;
        Placement = placement;
        Grain = grain;
    }

    internal ChipId Id { get; }

    /// <summary>The corners of all rings, as the shape numbers them.</summary>
    internal ReadOnlySpan<Vertex> Corners { get; }

    internal ChipShape Shape { get; }

    internal Transform Placement { get; }

    /// <summary>The member that it lies on.</summary>
    internal MemberGrain Grain { get; }

    /// <summary>Counter-clockwise.</summary>
    internal ReadOnlySpan<Vertex> Outline => HasHoles ? Ring(0) : Corners;

    internal bool HasHoles => Shape.RingCount > 1;

    /// <summary>The outline and the holes together.</summary>
    internal int RingCount => Shape.RingCount;

    /// <summary>Returns the outline, 0, or one of the holes, from 1, which run clockwise.</summary>
    internal ReadOnlySpan<Vertex> Ring(int ring) => Corners[Shape.CornersOf(ring)];

    /// <summary>How it is cut, where it lies: corners count in <see cref="Outline"/>.</summary>
    internal ChipCut Cut => Shape.Cut.Placed(Placement, Shape.Outline.Count);

    internal PlacedChip Renumbered(ChipId id) => new(id, Corners, Shape, Placement, Grain);

    /// <summary>Returns the chip as part of a piece of wood.</summary>
    internal PlacedChip InMember(MemberGrain member) =>
        new(Id, Corners, Shape, Placement, Grain.In(member));

    /// <summary>Returns the chip placed once more.</summary>
    /// <param name="id">Its id there.</param>
    /// <param name="corners">Where its corners went, counter-clockwise.</param>
    /// <param name="placement">How it is placed.</param>
    internal PlacedChip Mapped(ChipId id, ReadOnlySpan<Vertex> corners, Transform placement) =>
        new(id, corners, Shape, Placement.Then(placement), Grain.Placed(placement));

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
