using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// A DXF being written from front to back. The one place where a dialect, or a library, plugs in: what is drawn, and in
/// which order, is decided before.
/// </summary>
internal interface IDxfFile
{
    /// <summary>Writes everything that comes before the drawing.</summary>
    /// <param name="extents">Extents of all that will be drawn.</param>
    /// <param name="entityCount">Exactly how many entities will be drawn.</param>
    void Begin(Extents extents, long entityCount);

    void Line(Layer layer, in RoundedVertex from, in RoundedVertex to);

    /// <summary>Draws a run of lines and arcs of at most a half circle each.</summary>
    void Polyline(Layer layer, ReadOnlySpan<RoundedVertex> vertices, bool closed);

    void Circle(Layer layer, Point centre, double radius);

    /// <summary>Writes everything that comes after the drawing.</summary>
    void End();
}
