using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// A DXF being written from front to back. The one place where a dialect, or a library, plugs in: what is drawn, and in
/// which order, is decided before.
/// </summary>
internal interface IDxfFile
{
    /// <summary>Where the drawing's entities go.</summary>
    IDxfEntities Drawing { get; }

    /// <summary>Writes everything that comes before the drawing.</summary>
    /// <param name="extents">Extents of all that will be drawn.</param>
    /// <param name="entityCount">How many entities will be drawn, with the corners and ends that a polyline in space is made of; no fewer.</param>
    void Begin(Extents extents, long entityCount);

    /// <summary>Writes everything that comes after the drawing.</summary>
    void End();
}
