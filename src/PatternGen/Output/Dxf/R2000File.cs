using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Release 2000 (AC1015), which states its unit: handles, owners, the nine tables and the objects.</summary>
/// <remarks>
/// Lenient readers accept far less, strict ones refuse the whole file for one missing piece, so everything that the
/// DXF Reference names is there, in its order, and no optional group with its default value.
/// </remarks>
internal sealed partial class R2000File : IDxfFile
{
    private readonly OutputBuffer _output;
    private readonly int _decimals;
    private readonly IReadOnlyList<Contour> _shapes;
    private readonly DxfGroups _groups;
    private readonly R2000Entities _drawing;

    /// <param name="output">Where the file goes.</param>
    /// <param name="decimals">Decimals of a coordinate.</param>
    /// <param name="shapes">Outlines of chips that are kept as blocks.</param>
    internal R2000File(OutputBuffer output, int decimals, IReadOnlyList<Contour> shapes)
    {
        (_output, _decimals, _shapes) = (output, decimals, shapes);
        _groups = new(output, decimals);
        _drawing = new(_groups, ModelRecord, BlockHandle(shapes.Count));
    }

    public IDxfEntities Drawing => _drawing;

    public void Begin(Extents extents, long entityCount)
    {
        WriteHeader(extents, handleSeed: BlockHandle(_shapes.Count) + entityCount);
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

    /// <summary>Draws a copy of one of the shapes.</summary>
    internal void Insert(Layer layer, ChipCopy copy) => _drawing.Insert(layer, copy);

    public void End()
    {
        _groups.Write("0 ENDSEC");
        WriteObjects();
        _groups.Write("0 EOF");
    }
}
