using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// What a chip looks like: its outline, its holes, where the ground stays standing, and how it is cut. As drawn in the
/// motif's own frame it is one object that all repeats share.
/// </summary>
/// <remarks>
/// The rings are numbered, the outline 0, the holes from 1. Placed, the corners of all of them pass through the tree as
/// one run, so that a chip with holes is mapped like one without. Equal if made of the same contours and cut alike.
/// </remarks>
internal sealed class ChipShape : IEquatable<ChipShape>
{
    private readonly Contour[] _holes;
    private readonly Vertex[]? _allCorners;

    /// <summary>For each ring the number of corners up to its end.</summary>
    private readonly int[] _ends;

    private readonly Lazy<Roof> _roof;

    /// <param name="outline">Counter-clockwise.</param>
    /// <param name="holes">Clockwise, inside the outline and apart from each other, but for points where they touch.</param>
    internal ChipShape(Contour outline, params Contour[] holes)
    {
        Outline = outline;
        _holes = holes;
        _ends = new int[1 + holes.Length];
        _ends[0] = outline.Count;
        for (var i = 0; i < holes.Length; i++)
            _ends[i + 1] = _ends[i] + holes[i].Count;
        _roof = new(() => Roof.Over(outline, holes));
        if (holes.Length > 0)
            _allCorners = [.. outline.Vertices, .. holes.SelectMany(hole => hole.Vertices)];
    }

    private ChipShape(ChipShape other, ChipCut cut)
    {
        Outline = other.Outline;
        _holes = other._holes;
        _ends = other._ends;
        _allCorners = other._allCorners;
        // The walls meet where they meet at any angle.
        _roof = other._roof;
        Cut = cut;
    }

    internal Contour Outline { get; }

    /// <summary>How it is cut; corners count in <see cref="Outline"/>.</summary>
    internal ChipCut Cut { get; } = ChipCut.Walls;

    internal IReadOnlyList<Contour> Holes => _holes;

    /// <summary>How its walls meet: made once, when first asked for, whatever the number of repeats.</summary>
    internal Roof Roof => _roof.Value;

    internal int RingCount => _ends.Length;

    /// <summary>The corners of all rings, one ring after the other.</summary>
    internal ReadOnlySpan<Vertex> Corners => _allCorners ?? Outline.Span;

    /// <summary>Which of the corners belong to a ring.</summary>
    internal Range CornersOf(int ring) => (ring > 0 ? _ends[ring - 1] : 0).._ends[ring];

    /// <summary>Returns the same shape cut in another way; the outline stays the same object.</summary>
    internal ChipShape WithCut(ChipCut cut) => cut == Cut ? this : new(this, cut);

    public bool Equals(ChipShape? other) =>
        this == other
        || (
            other is not null
            && Outline == other.Outline
            && Cut == other.Cut
            && _holes.SequenceEqual(other._holes)
        );

    public override bool Equals(object? obj) => Equals(obj as ChipShape);

    public override int GetHashCode() => HashCode.Combine(Outline, Cut);
}
