using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Release 2000 (AC1015), which states its unit: handles, owners, the nine tables and the objects.</summary>
/// <remarks>
/// Lenient readers accept far less, strict ones refuse the whole file for one missing piece, so everything that the
/// DXF Reference names is there, in its order, and no optional group with its default value.
/// </remarks>
internal sealed partial class R2000File(OutputBuffer output, int decimals) : IDxfFile
{
    private readonly DxfGroups _groups = new(output, decimals);

    /// <summary>For each layer the groups of an entity from after its handle to before its own marker.</summary>
    private readonly byte[][] _common = DxfLayers.Bytes(name =>
        $"\r\n330\r\n{ModelRecord}\r\n100\r\nAcDbEntity\r\n8\r\n{name}\r\n100\r\n"
    );

    private long _handle = FirstEntity;

    public void Begin(Extents extents, long entityCount)
    {
        WriteHeader(extents, handleSeed: FirstEntity + entityCount);
        WriteClasses();
        WriteTables(extents);
        WriteBlocks();
        _groups.Write(
            """
            0 SECTION
            2 ENTITIES
            """
        );
    }

    public void Line(Layer layer, in RoundedVertex from, in RoundedVertex to)
    {
        WriteCommon("0\r\nLINE\r\n5\r\n"u8, layer);
        _groups.Write("AcDbLine\r\n"u8);
        _groups.WriteScaled("10\r\n"u8, from.X);
        _groups.WriteScaled("20\r\n"u8, from.Y);
        _groups.Write("30\r\n0.0\r\n"u8);
        _groups.WriteScaled("11\r\n"u8, to.X);
        _groups.WriteScaled("21\r\n"u8, to.Y);
        _groups.Write("31\r\n0.0\r\n"u8);
    }

    public void Polyline(Layer layer, ReadOnlySpan<RoundedVertex> vertices, bool closed)
    {
        WriteCommon("0\r\nLWPOLYLINE\r\n5\r\n"u8, layer);
        _groups.Write("AcDbPolyline\r\n90\r\n"u8, vertices.Length);
        _groups.Write(closed ? "70\r\n1\r\n43\r\n0.0\r\n"u8 : "70\r\n0\r\n43\r\n0.0\r\n"u8);
        foreach (ref readonly var vertex in vertices)
            _groups.Write(vertex);
    }

    public void Circle(Layer layer, Point centre, double radius)
    {
        WriteCommon("0\r\nCIRCLE\r\n5\r\n"u8, layer);
        _groups.Write("AcDbCircle\r\n10\r\n"u8, centre.X);
        _groups.Write("20\r\n"u8, centre.Y);
        _groups.Write("30\r\n0.0\r\n40\r\n"u8, radius);
    }

    public void End()
    {
        _groups.Write("0 ENDSEC");
        WriteObjects();
        _groups.Write("0 EOF");
    }

    private void WriteCommon(ReadOnlySpan<byte> type, Layer layer)
    {
        _groups.Write(type);
        _groups.WriteHandle(_handle++);
        _groups.Write(_common[(int)layer]);
    }
}
