namespace PatternGen;

/// <summary>The entities that a reader tells apart.</summary>
internal enum DxfKind
{
    /// <summary>Anything that is no line in a plane.</summary>
    Other,
    Line,
    Arc,
    Circle,
    Ellipse,
    Spline,
    Insert,

    /// <summary>LWPOLYLINE: its corners stand in the entity itself.</summary>
    Polyline,

    /// <summary>POLYLINE: each corner is an entity, VERTEX, up to SEQEND.</summary>
    OldPolyline,
    Vertex,
}
