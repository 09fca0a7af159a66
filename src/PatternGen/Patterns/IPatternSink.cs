using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Takes the flattened content of a pattern, piece by piece. The spans are only valid during the call.</summary>
internal interface IPatternSink
{
    void Chip(in PlacedChip chip);

    void LineCut(ReadOnlySpan<Vertex> path, double width);

    void LayoutLine(ReadOnlySpan<Vertex> path);

    void Stock(ReadOnlySpan<Vertex> outline);

    void Label(Label label);
}

/// <summary>A chip as it passes through the tree: where it lies by now, and the shared shape it came from.</summary>
internal readonly ref struct PlacedChip(
    ChipId id,
    ReadOnlySpan<Vertex> outline,
    Contour shape,
    Transform placement
)
{
    internal ChipId Id { get; } = id;
    internal ReadOnlySpan<Vertex> Outline { get; } = outline;
    internal Contour Shape { get; } = shape;
    internal Transform Placement { get; } = placement;
}
