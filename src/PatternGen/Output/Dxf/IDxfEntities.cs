using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Where entities go: into a drawing or into a block.</summary>
internal interface IDxfEntities
{
    void Line(Layer layer, in RoundedVertex from, in RoundedVertex to);

    /// <summary>Draws a run of lines and arcs of at most a half circle each.</summary>
    void Polyline(Layer layer, ReadOnlySpan<RoundedVertex> vertices, bool closed);

    /// <summary>Draws a run of lines in space.</summary>
    void Polyline(Layer layer, ReadOnlySpan<RoundedPlace> places, bool closed);

    void Circle(Layer layer, Circle circle);
}
