using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A sink that passes over everything; derive from it to take some of the pieces.</summary>
internal abstract class SelectiveSink : IPatternSink
{
    public virtual void Chip(in PlacedChip chip) { }

    public virtual void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile) { }

    public virtual void LayoutLine(ReadOnlySpan<Vertex> path) { }

    public virtual void Stock(ReadOnlySpan<Vertex> outline) { }

    public virtual void Label(Label label) { }

    public virtual void GridLine(ReadOnlySpan<Vertex> path) { }
}
