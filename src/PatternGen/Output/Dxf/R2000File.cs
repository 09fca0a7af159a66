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
    private readonly IReadOnlyList<Layer> _layers;
    private readonly IReadOnlyList<ChipShape> _shapes;

    /// <summary>The first handle of each shape's block, and after the last block the first one of the drawing.</summary>
    private readonly long[] _blockHandles;

    private readonly DxfGroups _groups;
    private readonly R2000Entities _drawing;

    /// <param name="output">Where the file goes.</param>
    /// <param name="decimals">Decimals of a coordinate.</param>
    /// <param name="layers">The layers to declare.</param>
    /// <param name="shapes">Chips that are kept as blocks.</param>
    internal R2000File(
        OutputBuffer output,
        int decimals,
        IReadOnlyList<Layer> layers,
        IReadOnlyList<ChipShape> shapes
    )
    {
        (_output, _decimals, _layers, _shapes) = (output, decimals, layers, shapes);
        _blockHandles = BlockHandles(shapes);
        _groups = new(output, decimals);
        _drawing = new(_groups, ModelRecord, _blockHandles[^1]);
    }

    public IDxfEntities Drawing => _drawing;

    public void Begin(Extents extents, long entityCount)
    {
        WriteHeader(extents, handleSeed: _blockHandles[^1] + entityCount);
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
