namespace PatternGen;

/// <summary>Knows the entities by their names in the file.</summary>
internal static class DxfKinds
{
    internal static bool IsDrawn(this DxfKind kind) => kind != DxfKind.Other;

    internal static DxfKind Of(ReadOnlySpan<byte> name) =>
        name switch
        {
            _ when name.SequenceEqual("LINE"u8) => DxfKind.Line,
            _ when name.SequenceEqual("LWPOLYLINE"u8) => DxfKind.Polyline,
            _ when name.SequenceEqual("VERTEX"u8) => DxfKind.Vertex,
            _ when name.SequenceEqual("POLYLINE"u8) => DxfKind.OldPolyline,
            _ when name.SequenceEqual("ARC"u8) => DxfKind.Arc,
            _ when name.SequenceEqual("CIRCLE"u8) => DxfKind.Circle,
            _ when name.SequenceEqual("ELLIPSE"u8) => DxfKind.Ellipse,
            _ when name.SequenceEqual("SPLINE"u8) => DxfKind.Spline,
            _ when name.SequenceEqual("INSERT"u8) => DxfKind.Insert,
            _ => DxfKind.Other,
        };

    /// <summary>What people call an entity that is skipped.</summary>
    internal static string Called(ReadOnlySpan<byte> name) =>
        DxfText.Shown(name) switch
        {
            "TEXT" or "MTEXT" or "ATTRIB" or "ATTDEF" => "text",
            "HATCH" or "MPOLYGON" => "hatching",
            "DIMENSION" or "ARC_DIMENSION" or "LARGE_RADIAL_DIMENSION" or "TOLERANCE" =>
                "dimension",
            "LEADER" or "MULTILEADER" => "leader",
            "POINT" => "point",
            "SOLID" or "TRACE" or "3DFACE" => "filled face",
            "3DSOLID" or "BODY" or "REGION" or "SURFACE" or "MESH" => "solid or surface",
            "IMAGE" or "OLEFRAME" or "OLE2FRAME" or "WIPEOUT" => "picture",
            "VIEWPORT" => "viewport",
            "XLINE" or "RAY" => "endless line",
            "MLINE" => "multiple line",
            "" => "entity without a name",
            var other => $"entity {other}",
        };
}
