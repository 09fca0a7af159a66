using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Release 12 (AC1009): no handles, no unit, contours as POLYLINE with VERTEX records.</summary>
/// <param name="output">Where the file goes.</param>
/// <param name="decimals">Decimals of a coordinate.</param>
/// <param name="layers">The layers to declare.</param>
internal sealed class R12File(OutputBuffer output, int decimals, IReadOnlyList<Layer> layers)
    : IDxfFile,
        IDxfEntities
{
    private readonly DxfGroups _groups = new(output, decimals);

    /// <summary>For each layer the groups that begin an entity after its type.</summary>
    private readonly byte[][] _onLayer = DxfLayers.Bytes(name => $"8\r\n{name}\r\n");

    public IDxfEntities Drawing => this;

    public void Begin(Extents extents, long entityCount)
    {
        _groups.Write(
            """
            0 SECTION
            2 HEADER
            9 $ACADVER
            1 AC1009
            """
        );
        _groups.WriteExtents(extents);
        _groups.Write(
            """
            0 ENDSEC
            0 SECTION
            2 TABLES
            0 TABLE
            2 LTYPE
            70 1
            0 LTYPE
            2 CONTINUOUS
            70 0
            3 Solid line
            72 65
            73 0
            40 0.0
            0 ENDTAB
            0 TABLE
            2 LAYER
            """
        );
        _groups.Write($"70 {layers.Count + 1}");
        WriteLayer("0", 7);
        foreach (var layer in layers)
            WriteLayer(DxfLayers.NameOf(layer), DxfLayers.ColourOf(layer));
        _groups.Write(
            """
            0 ENDTAB
            0 TABLE
            2 STYLE
            70 1
            0 STYLE
            """
        );
        _groups.WriteTextStyle("STANDARD");
        _groups.Write(
            """
            0 ENDTAB
            0 ENDSEC
            0 SECTION
            2 BLOCKS
            0 ENDSEC
            0 SECTION
            2 ENTITIES
            """
        );
    }

    public void Line(Layer layer, in RoundedVertex from, in RoundedVertex to)
    {
        _groups.Write("0\r\nLINE\r\n"u8);
        _groups.Write(_onLayer[(int)layer]);
        _groups.WriteEnds(from, to);
    }

    public void Polyline(Layer layer, ReadOnlySpan<RoundedVertex> vertices, bool closed)
    {
        _groups.Write("0\r\nPOLYLINE\r\n"u8);
        _groups.Write(_onLayer[(int)layer]);
        _groups.Write("66\r\n1\r\n10\r\n0.0\r\n20\r\n0.0\r\n30\r\n0.0\r\n70\r\n"u8);
        _groups.Write(closed ? "1\r\n"u8 : "0\r\n"u8);
        foreach (ref readonly var vertex in vertices)
        {
            _groups.Write("0\r\nVERTEX\r\n"u8);
            _groups.Write(_onLayer[(int)layer]);
            _groups.Write(vertex, "30\r\n0.0\r\n"u8);
        }
        _groups.Write("0\r\nSEQEND\r\n"u8);
        _groups.Write(_onLayer[(int)layer]);
    }

    public void Polyline(Layer layer, ReadOnlySpan<RoundedPlace> places, bool closed)
    {
        _groups.Write("0\r\nPOLYLINE\r\n"u8);
        _groups.Write(_onLayer[(int)layer]);
        _groups.WriteSpatialHead(closed);
        foreach (ref readonly var place in places)
        {
            _groups.Write("0\r\nVERTEX\r\n"u8);
            _groups.Write(_onLayer[(int)layer]);
            _groups.Write(place);
        }
        _groups.Write("0\r\nSEQEND\r\n"u8);
        _groups.Write(_onLayer[(int)layer]);
    }

    public void Circle(Layer layer, Circle circle)
    {
        _groups.Write("0\r\nCIRCLE\r\n"u8);
        _groups.Write(_onLayer[(int)layer]);
        _groups.Write(circle);
    }

    public void End() =>
        _groups.Write(
            """
            0 ENDSEC
            0 EOF
            """
        );

    private void WriteLayer(string name, int colour) =>
        _groups.Write(
            $"""
            0 LAYER
            2 {name}
            70 0
            62 {colour}
            6 CONTINUOUS
            """
        );
}
