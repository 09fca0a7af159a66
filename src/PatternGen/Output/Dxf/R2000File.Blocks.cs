using PatternGen.Geometry;

namespace PatternGen;

internal sealed partial class R2000File
{
    /// <summary>What the record of a block names that is no space to draw in.</summary>
    private const string NoLayout = "0";

    private void WriteBlocks()
    {
        _groups.Write(
            """
            0 SECTION
            2 BLOCKS
            """
        );
        WriteSpaceBlock("*Model_Space", ModelRecord, ModelBlock, ModelBlockEnd);
        WriteSpaceBlock("*Paper_Space", PaperRecord, PaperBlock, PaperBlockEnd);
        for (var i = 0; i < _shapes.Count; i++)
            WriteShapeBlock(i);
        _groups.Write("0 ENDSEC");
    }

    /// <summary>The drawing itself is among the entities, so the blocks of the two spaces are empty.</summary>
    private void WriteSpaceBlock(string name, string record, string begin, string end)
    {
        WriteBlockBegin(name, record, begin);
        WriteBlockEnd(record, end);
    }

    /// <summary>A block that holds one outline, with its first corner at the origin.</summary>
    private void WriteShapeBlock(int number)
    {
        var handle = BlockHandle(number);
        var record = $"{handle:X}";
        WriteBlockBegin(BlockName(number), record, $"{handle + 1:X}");
        WriteShape(_shapes[number].Span, record, handle + 2);
        WriteBlockEnd(record, $"{handle + 3:X}");
    }

    private void WriteShape(ReadOnlySpan<Vertex> shape, string record, long handle)
    {
        var decimals = RepeatedShapes.Decimals(_decimals);
        var entities = new R2000Entities(new(_output, decimals), record, handle);
        new DxfShapes(entities, decimals, origin: shape[0].Point).Ring(Layer.Chips, shape);
    }

    private void WriteBlockBegin(string name, string record, string handle) =>
        _groups.Write(
            $"""
            0 BLOCK
            5 {handle}
            330 {record}
            100 AcDbEntity
            8 0
            100 AcDbBlockBegin
            2 {name}
            70 0
            10 0.0
            20 0.0
            30 0.0
            3 {name}
            1
            """
        );

    private void WriteBlockEnd(string record, string handle) =>
        _groups.Write(
            $"""
            0 ENDBLK
            5 {handle}
            330 {record}
            100 AcDbEntity
            8 0
            100 AcDbBlockEnd
            """
        );

    /// <summary>The first handle of a shape's block; after the last block the first one of the drawing.</summary>
    private static long BlockHandle(int number) => FirstEntity + (long)HandlesPerBlock * number;

    private static string BlockName(int number) => $"CHIP_{number + 1}";
}
