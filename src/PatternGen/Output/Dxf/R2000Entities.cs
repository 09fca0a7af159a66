using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Entities of release 2000: each with a handle, and owned by the record of the block that it lies in.</summary>
/// <param name="groups">Where they go.</param>
/// <param name="owner">Handle of the record.</param>
/// <param name="firstHandle">Handle of the first entity; those of the others count on.</param>
internal sealed class R2000Entities(DxfGroups groups, string owner, long firstHandle) : IDxfEntities
{
    /// <summary>For each layer the groups of an entity from after its handle to before its own marker.</summary>
    private readonly byte[][] _common = DxfLayers.Bytes(name =>
        $"\r\n330\r\n{owner}\r\n100\r\nAcDbEntity\r\n8\r\n{name}\r\n100\r\n"
    );

    /// <summary>The same for a part of an entity, which has a marker of its own only if it is a corner.</summary>
    private readonly byte[][] _part = DxfLayers.Bytes(name =>
        $"\r\n100\r\nAcDbEntity\r\n8\r\n{name}\r\n"
    );

    private long _handle = firstHandle;

    public void Line(Layer layer, in RoundedVertex from, in RoundedVertex to)
    {
        WriteCommon("0\r\nLINE\r\n5\r\n"u8, layer);
        groups.Write("AcDbLine\r\n"u8);
        groups.WriteEnds(from, to);
    }

    public void Polyline(Layer layer, ReadOnlySpan<RoundedVertex> vertices, bool closed)
    {
        WriteCommon("0\r\nLWPOLYLINE\r\n5\r\n"u8, layer);
        groups.Write("AcDbPolyline\r\n90\r\n"u8, vertices.Length);
        groups.Write(closed ? "70\r\n1\r\n43\r\n0.0\r\n"u8 : "70\r\n0\r\n43\r\n0.0\r\n"u8);
        foreach (ref readonly var vertex in vertices)
            groups.Write(vertex);
    }

    public void Polyline(Layer layer, ReadOnlySpan<RoundedPlace> places, bool closed)
    {
        var polyline = _handle;
        WriteCommon("0\r\nPOLYLINE\r\n5\r\n"u8, layer);
        groups.Write("AcDb3dPolyline\r\n"u8);
        groups.WriteSpatialHead(closed);
        foreach (ref readonly var place in places)
        {
            WritePart("0\r\nVERTEX\r\n5\r\n"u8, layer, polyline);
            groups.Write("100\r\nAcDbVertex\r\n100\r\nAcDb3dPolylineVertex\r\n"u8);
            groups.Write(place);
        }
        WritePart("0\r\nSEQEND\r\n5\r\n"u8, layer, polyline);
    }

    public void Circle(Layer layer, Circle circle)
    {
        WriteCommon("0\r\nCIRCLE\r\n5\r\n"u8, layer);
        groups.Write("AcDbCircle\r\n"u8);
        groups.Write(circle);
    }

    /// <summary>Draws the block of a shape, moved and turned only: its size is the default, 1.</summary>
    internal void Insert(Layer layer, ChipCopy copy)
    {
        WriteCommon("0\r\nINSERT\r\n5\r\n"u8, layer);
        groups.Write("AcDbBlockReference\r\n2\r\nCHIP_"u8, copy.Shape + 1);
        groups.Write("10\r\n"u8, copy.At.X);
        groups.Write("20\r\n"u8, copy.At.Y);
        groups.Write("30\r\n0.0\r\n"u8);
        if (copy.Degrees != 0)
            groups.WriteTurn("50\r\n"u8, copy.Degrees);
    }

    /// <summary>Writes the groups that begin what a polyline is made of, which belongs to that.</summary>
    private void WritePart(ReadOnlySpan<byte> type, Layer layer, long polyline)
    {
        groups.Write(type);
        groups.WriteHandle(_handle++);
        groups.Write("\r\n330\r\n"u8);
        groups.WriteHandle(polyline);
        groups.Write(_part[(int)layer]);
    }

    private void WriteCommon(ReadOnlySpan<byte> type, Layer layer)
    {
        groups.Write(type);
        groups.WriteHandle(_handle++);
        groups.Write(_common[(int)layer]);
    }
}
