using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A sink that changes something about chips and passes everything else on.</summary>
internal abstract class ForwardingSink(IPatternSink target) : IPatternSink
{
    protected IPatternSink Target => target;

    public abstract void Chip(in PlacedChip chip);

    public void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile) =>
        target.LineCut(path, width, profile);

    public void LayoutLine(ReadOnlySpan<Vertex> path) => target.LayoutLine(path);

    public void Stock(ReadOnlySpan<Vertex> outline) => target.Stock(outline);

    public void Label(Label label) => target.Label(label);

    public void GridLine(ReadOnlySpan<Vertex> path) => target.GridLine(path);
}
