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

    /// <summary>A block that holds one chip, with its first corner at the origin.</summary>
    private void WriteShapeBlock(int number)
    {
        var (handle, next) = (_blockHandles[number], _blockHandles[number + 1]);
        var record = $"{handle:X}";
        WriteBlockBegin(BlockName(number), record, $"{handle + 1:X}");
        WriteShape(_shapes[number], record, handle + 2);
        WriteBlockEnd(record, $"{next - 1:X}");
    }

    private void WriteShape(ChipShape shape, string record, long handle)
    {
        var decimals = RepeatedShapes.Decimals(_decimals);
        var entities = new R2000Entities(new(_output, decimals), record, handle);
        new DxfShapes(entities, decimals, origin: shape.Corners[0].Point).Chip(new(default, shape));
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

    private static long[] BlockHandles(IReadOnlyList<ChipShape> shapes)
    {
        var handles = new long[shapes.Count + 1];
        handles[0] = FirstEntity;
        for (var i = 0; i < shapes.Count; i++)
            handles[i + 1] = handles[i] + HandlesPerBlock + shapes[i].RingCount;
        return handles;
    }

    private static string BlockName(int number) => $"CHIP_{number + 1}";
}
