namespace PatternGen.Tests.Output.Dxf;

public partial class DxfLintTests
{
    private const string BlockHead =
        "0 LWPOLYLINE|5 32|330 30|100 AcDbEntity|8 CHIPS|100 AcDbPolyline|90 3|70 1|43 0.0|";

    private const string BlockCorners = "10 0|20 0|10 8|20 0|42 0.1|10 4|20 4|";

    private const string BlockEnd = "0 ENDBLK|5 33|330 30|100 AcDbEntity|8 0|100 AcDbBlockEnd|";

    /// <summary>What the fault is, what is replaced, by what, and how the finding begins.</summary>
    public static TheoryData<string, string, string, string> BlockFaults =>
        new()
        {
            {
                "a block that is not there",
                "2 CHIP_1|10 20|",
                "2 CHIP_2|10 20|",
                "block: 'CHIP_2'"
            },
            { "a space as a block", "2 CHIP_1|10 20|", "2 *Paper_Space|10 20|", "block: '*Paper" },
            {
                "a mirrored copy",
                "20 0|30 0.0|0 INSERT|",
                "20 0|30 0.0|41 -1.0|0 INSERT|",
                "order"
            },
            {
                "an extrusion",
                "20 0|30 0.0|0 INSERT|",
                "20 0|30 0.0|210 0.0|220 0.0|230 -1.0|0 INSERT|",
                "order"
            },
            {
                "another marker",
                "100 AcDbBlockReference|",
                "100 AcDbMInsertBlock|",
                "order: markers"
            },
            { "a record of another name", "2 CHIP_1|340 0|", "2 CHIP_3|340 0|", "block: blocks" },
            { "a block of two names", "3 CHIP_1|", "3 CHIP_2|", "block: two names" },
            {
                "an entity that another block owns",
                "0 LWPOLYLINE|5 32|330 30|",
                "0 LWPOLYLINE|5 32|330 14|",
                "block: LWPOLYLINE"
            },
            {
                "an entity that model space owns",
                "0 LWPOLYLINE|5 32|330 30|",
                "0 LWPOLYLINE|5 32|330 11|",
                "block: LWPOLYLINE"
            },
            {
                "a space without layout",
                "2 *Paper_Space|340 10|",
                "2 *Paper_Space|340 0|",
                "owner"
            },
            {
                "an undeclared layer",
                "8 CHIPS|100 AcDbPolyline|",
                "8 CUTS|100 AcDbPolyline|",
                "layer"
            },
            { "a low seed", "9 $HANDSEED|5 37|", "9 $HANDSEED|5 36|", "handle: $HANDSEED" },
            { "wrong extents", "9 $EXTMAX|10 48|", "9 $EXTMAX|10 8|", "header: $EXTMAX" },
            { "a chip twice", "2 CHIP_1|10 20|", "2 CHIP_1|10 0|", "duplicate" },
            { "a block left open", BlockEnd, "", "block: CHIP_1 is not closed" },
            { "an empty block", BlockHead + BlockCorners, "", "block: content of CHIP_1" },
            {
                "a block in a block",
                BlockHead,
                "0 INSERT|5 32|330 30|100 AcDbEntity|8 CHIPS|100 AcDbBlockReference|2 CHIP_1|",
                "block: CHIP_1 refers to another"
            },
        };

    [Theory]
    [MemberData(nameof(BlockFaults))]
    public void A_fault_of_blocks_is_found(
        string fault,
        string find,
        string replace,
        string finding
    )
    {
        var broken = Replace(WithBlocks(), find, replace);

        DxfLint
            .Check(broken)
            .ShouldContain(text => text.StartsWith(finding, StringComparison.Ordinal), fault);
    }

    [Fact]
    public void A_block_that_nothing_refers_to_is_found()
    {
        var broken = WithBlocks();
        foreach (var place in (string[])["10 0|", "10 20|", "10 40|"])
            broken = Replace(broken, $"2 CHIP_1|{place}", $"2 CHIP_2|{place}");

        DxfLint.Check(broken).ShouldContain("block: CHIP_1 is not used");
    }

    [Fact]
    public void Nothing_is_found_in_clean_blocks() => DxfLint.Check(WithBlocks()).ShouldBeEmpty();

    private static byte[] WithBlocks() =>
        DxfSamples.Write(
            Pattern.OfChips(DxfSamples.Triangle).Repeated(3, 20),
            SaveOptions.Default.WithRepeats(Repeats.ByReference)
        );
}
