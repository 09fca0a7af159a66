using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Takes the flattened content of a pattern, piece by piece. The spans are only valid during the call.</summary>
internal interface IPatternSink
{
    void Chip(in PlacedChip chip);

    void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile);

    void LayoutLine(ReadOnlySpan<Vertex> path);

    void Stock(ReadOnlySpan<Vertex> outline);

    void Label(Label label);

    void GridLine(ReadOnlySpan<Vertex> path);
}
