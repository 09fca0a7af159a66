using System.Text;

namespace PatternGen.Tests.Importing.Dxf;

/// <summary>Broken files and files made to harm: each ends soon in a drawing or in one clear error.</summary>
public sealed class HostileDxfSpecs
{
    private const string Ends = "0 ENDSEC 0 EOF";
    private const string Entities = "0 SECTION 2 ENTITIES";

    public static TheoryData<string, string, string?> Broken =>
        new()
        {
            { "", "empty", null },
            { "\n\n\n", "empty", null },
            { "abc\n", "group code must stand here", "line 1" },
            { "<svg xmlns='http://www.w3.org/2000/svg'/>", "group code must stand here", "line 1" },
            { "0", "without its value", "line 1" },
            { "0\nSECTION\n2", "without its value", "line 3" },
            { "0\nSECTION\n\n\n2\nENTITIES\n", "line is blank", "line 3" },
            { DxfFile.Groups("0 SECTION"), "cut off", "line 2" },
            { DxfFile.Groups("0 SECTION 2 ENTITIES"), "cut off", "line 4" },
            { DxfFile.Groups("0 SECTION 3 ENTITIES"), "has a name", "line 4" },
            { DxfFile.Groups("0 SECTION 2 HEADER 9 $INSUNITS"), "cut off", "line 6" },
            {
                DxfFile.Groups("0 SECTION 2 HEADER 9 $INSUNITS 70 four 0 ENDSEC"),
                "whole number",
                "line 8"
            },
            {
                DxfFile.Groups("0 SECTION 2 HEADER 9 $INSUNITS 70 99999999999 0 ENDSEC"),
                "whole number",
                "line 8"
            },
            {
                DxfFile.Groups("0 SECTION 2 HEADER 0 ENDSEC 0 EOF"),
                "no section ENTITIES",
                "line 8"
            },
            { DxfFile.Groups("0 SECTION 2 OBJECTS 0 ENDSEC"), "no section ENTITIES", "line 6" },
            { DxfFile.Groups("0 EOF"), "no section ENTITIES", "line 2" },
            { DxfFile.Groups("0 LINE 10 0 20 0 11 1 21 0"), "A section must begin here", "line 2" },
            { DxfFile.Groups($"{Entities} 10 5 {Ends}"), "An entity must begin here", "line 6" },
            { DxfFile.Groups($"{Entities} 0 LINE 10 1"), "cut off", "line 8" },
            { DxfFile.Groups($"{Entities} 0 LINE 10 NaN {Ends}"), "finite number", "line 8" },
            { DxfFile.Groups($"{Entities} 0 LINE 10 1e400 {Ends}"), "finite number", "line 8" },
            { DxfFile.Groups($"{Entities} 0 LINE 10 -Infinity {Ends}"), "finite number", "line 8" },
            { DxfFile.Groups($"{Entities} 0 LINE 10 ∞ {Ends}"), "finite number", "line 8" },
            { DxfFile.Groups($"{Entities} 0 LINE 10 1,5 {Ends}"), "finite number", "line 8" },
            { DxfFile.Groups($"{Entities} 0 LINE 10 . {Ends}"), "finite number", "line 8" },
            {
                DxfFile.Groups($"{Entities} 0 LINE 10.5 1 {Ends}"),
                "group code must stand here",
                "line 7"
            },
            { DxfFile.Groups($"{Entities} 0 LINE 1072 1 {Ends}"), "between -5 and 1071", "line 7" },
            {
                DxfFile.Groups($"{Entities} 0 LINE 10 0 20 0 11 1e300 21 0 {Ends}"),
                "2 km",
                "line 6"
            },
            {
                DxfFile.Groups($"{Entities} 0 LWPOLYLINE 10 0 20 0 42 1e300 10 1 20 0 {Ends}"),
                "bulge",
                "line 6"
            },
            {
                DxfFile.Groups($"{Entities} 0 LWPOLYLINE 10 0 20 0 42 1e8 10 1 20 0 {Ends}"),
                "can't be drawn",
                "line 6"
            },
            {
                DxfFile.Groups($"{Entities} 0 LWPOLYLINE 20 0 {Ends}"),
                "belongs to a corner",
                "line 8"
            },
            {
                DxfFile.Groups($"{Entities} 0 ENDSEC 0 SECTION 2 BLOCKS {Ends}"),
                "must come before",
                "line 10"
            },
            { DxfFile.Groups($"{Entities} 0 CIRCLE 10 0 20 0 40 1e9 {Ends}"), "2 km", "line 6" },
            { DxfFile.Groups($"{Entities} 0 INSERT 2 X 70 1e9 {Ends}"), "whole number", "line 10" },
        };

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_file_says_what_is_wrong_and_where(string text, string what, string? where)
    {
        var error = Should.Throw<ImportException>(() => DxfFile.Import(text));

        error.Message.ShouldContain(what);
        error.Where.ShouldBe(where);
        error.Remedies.ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("\n", false, "")]
    [InlineData("\r\n", false, "")]
    [InlineData("\r", false, "")]
    [InlineData("\n", true, "")]
    [InlineData("\r\n", true, "\r\n\r\n \r\n")]
    [InlineData("\n", false, "anything at all after the end")]
    [InlineData(" \t\n", false, "")]
    public void Line_ends_marks_and_what_follows_the_end_make_no_difference(
        string lineEnd,
        bool withMark,
        string after
    )
    {
        var text =
            DxfFile.Groups("999 comment 0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC", lineEnd)
            + DxfFile.Groups($"{Entities} 0 LINE 10 -1.5e1 20 +.5 11 1E1 21 5e-1 {Ends}", lineEnd);
        var mark = withMark ? "\uFEFF" : "";

        var drawing = DxfFile.Import(mark + text + after);

        drawing.Notes.ShouldBeEmpty();
        var line = drawing.Chains.ShouldHaveSingleItem();
        (line.Start, line.End).ShouldBe((new Point(-15, 0.5), new Point(10, 0.5)));
    }

    [Theory]
    [InlineData("0 SECTION 2 ENTITIES 0 LINE 10 0 20 0 11 9 21 0 0 ENDSEC", "no EOF")]
    [InlineData("0 SECTION 2 ENTITIES 0 LINE 10 0 20 0 11 9 21 0 0 EOF", "without ENDSEC")]
    [InlineData(
        "0 SECTION 2 HEADER 0 SECTION 2 ENTITIES 0 LINE 10 0 20 0 11 9 21 0 0 ENDSEC 0 EOF",
        "without ENDSEC"
    )]
    [InlineData(
        "0 SECTION 2 ENTITIES 0 POLYLINE 66 1 0 VERTEX 10 0 20 0 0 VERTEX 10 9 20 0 0 ENDSEC 0 EOF",
        "without SEQEND"
    )]
    public void Missing_ends_are_told_where_nothing_is_lost(string groups, string what)
    {
        var drawing = DxfFile.Import(DxfFile.Groups(groups), ImportSettings.Default.WithUnit(1));

        drawing.Chains.ShouldHaveSingleItem().Length.ShouldBe(9);
        var note = drawing.Notes.ShouldHaveSingleItem();
        note.Kind.ShouldBe(ImportNoteKind.Assumed);
        note.What.ShouldContain(what);
        note.Where.ShouldNotBeNull();
    }

    [Fact]
    public void A_binary_file_is_refused_in_words()
    {
        // The first line of the format, as the DXF Reference gives it, then a section in binary.
        byte[] bytes = [.. "AutoCAD Binary DXF\r\n"u8, 0x1A, 0, 0, 0, .. "SECTION\0"u8, 2, 0];

        var error = Should.Throw<ImportException>(() => DxfFile.Import(bytes));

        error.Message.ShouldContain("binary DXF");
        error.Remedies.ShouldContain(remedy => remedy.Contains("ASCII"));
    }

    [Theory]
    [InlineData("lines")]
    [InlineData("blocks")]
    public void A_good_file_cut_off_anywhere_is_an_error_or_a_drawing(string name)
    {
        var file = DxfFile.SectionsRead(name);
        // Coarse, so that fitting curves to arcs takes no time.
        var coarse = ImportSettings.Default.WithAccuracy(1);
        DxfFile.Import(file, coarse).Contours.ShouldNotBeEmpty();
        for (var length = 0; length < file.Length; length++)
            if (IsNearLineEnd(length))
                End(file.AsSpan(0, length).ToArray(), coarse);

        // Before a line, after its first byte, before its last one, and before its end: all others only cut a number shorter.
        bool IsNearLineEnd(int length) =>
            file.AsSpan()[Math.Max(0, length - 2)..Math.Min(file.Length, length + 2)]
                .Contains((byte)'\n');
    }

    [Fact]
    public Task Files_that_ask_for_too_much_are_refused() =>
        Patience.WithinMinutes(() =>
        {
            const string Dot = "0 BLOCK 2 A 10 0 20 0 0 LINE 10 0 20 0 11 1 21 1 0 ENDBLK";
            const string Array = "0 INSERT 2 A 10 0 20 0 70 32767 71 32767 44 1 45 1";
            Refused(DxfFile.WithBlocks(Dot, Array), "elements");
            Refused(
                DxfFile.WithBlocks("0 BLOCK 2 A 0 INSERT 2 A 0 ENDBLK", "0 INSERT 2 A"),
                "holds itself"
            );
            Refused(
                DxfFile.WithBlocks(
                    "0 BLOCK 2 A 0 INSERT 2 B 0 ENDBLK 0 BLOCK 2 B 0 INSERT 2 A 0 ENDBLK",
                    "0 INSERT 2 A"
                ),
                "holds itself"
            );
            Refused(DxfFile.WithBlocks(Nested(1000, 1), "0 INSERT 2 N1000"), "64 deep");
            // Ten of the one below in each: ten thousand million lines, or as many times nothing.
            Refused(DxfFile.WithBlocks(Nested(10, 10), "0 INSERT 2 N10"), "elements");
            Refused(DxfFile.WithBlocks(Nested(10, 10, ""), "0 INSERT 2 N10"), "elements");
            // An array of nothing is nothing.
            DxfFile
                .Import(DxfFile.WithBlocks("0 BLOCK 2 A 0 ENDBLK", Array, DxfFile.Line(0, 0, 1, 0)))
                .Chains.ShouldHaveSingleItem();
            // Counts that lie are not believed.
            DxfFile
                .Import(DxfFile.Of("0 LWPOLYLINE 90 2147483647 70 0 10 0 20 0 10 5 20 0"))
                .Chains.ShouldHaveSingleItem();
        });

    [Theory]
    [InlineData("0\nSECTION\n2\n", "x", "line")]
    [InlineData("", "0", "line")]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nLINE\n", "10\n0\n", "larger than")]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nLWPOLYLINE\n", "10\n0\n20\n0\n", "lines and arcs")]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nSPLINE\n", "40\n0\n", "lines and arcs")]
    [InlineData("0\nSECTION\n2\nENTITIES\n", "0\nPOINT\n", "elements")]
    [InlineData(
        "0\nSECTION\n2\nENTITIES\n0\nPOLYLINE\n",
        "0\nVERTEX\n10\n1\n20\n2\n",
        "lines and arcs"
    )]
    [InlineData("0\nSECTION\n2\nTABLES\n", "0\nLAYER\n2\nA\n", "elements")]
    [InlineData("0\nSECTION\n2\nTABLES\n", "0\nVPORT\n2\nA\n", "larger than")]
    [InlineData("0\nSECTION\n2\nBLOCKS\n", "0\nBLOCK\n2\nA\n0\nENDBLK\n", "elements")]
    [InlineData("0\nSECTION\n2\nBLOCKS\n", "0\nENDBLK\n0\nLINE\n", "elements")]
    [InlineData(
        "0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nA\n",
        "0\nLWPOLYLINE\n10\n0\n20\n0\n10\n1\n20\n0\n10\n2\n20\n0\n",
        "lines and arcs"
    )]
    [InlineData("0\nSECTION\n2\nHEADER\n", "9\n$A\n", "larger than")]
    [InlineData("0\nSECTION\n2\nBLOCKS\n", "0\nBLOCK\n2\nA\n0\nLINE\n", "elements")]
    [InlineData("0\nSECTION\n2\nOBJECTS\n", "0\nX\n", "larger than")]
    [InlineData("0\nSECTION\n2\nOBJECTS\n0\nENDSEC\n", "\n", "larger than")]
    public Task A_stream_without_an_end_is_left(string start, string again, string what) =>
        Patience.WithinMinutes(() =>
        {
            using var stream = new EndlessStream(start, again);
            var limits = ImportLimits
                .Default.WithBytes(20 << 20)
                .WithSegments(100_000)
                .WithElements(100_000);

            Should
                .Throw<ImportException>(() =>
                    Import.Drawing(
                        stream,
                        FileFormat.Dxf,
                        ImportSettings.Default.WithLimits(limits)
                    )
                )
                .Message.ShouldContain(what);
        });

    /// <summary>Fails unless the file is a drawing or refused: any other exception goes through.</summary>
    internal static void End(byte[] file, ImportSettings? settings = null)
    {
        try
        {
            _ = DxfFile.Import(file, settings).Notes;
        }
        catch (ImportException)
        {
            // One clear error; what it says is tested case by case.
        }
    }

    private static void Refused(string text, string what) =>
        Should.Throw<ImportException>(() => DxfFile.Import(text)).Message.ShouldContain(what);

    /// <summary>Blocks N1 to N…, each holding the one below a number of times, and N0 with a line.</summary>
    private static string Nested(
        int depth,
        int times,
        string innermost = "0 LINE 10 0 20 0 11 1 21 1"
    )
    {
        var blocks = new StringBuilder($"0 BLOCK 2 N0 {innermost} 0 ENDBLK");
        for (var level = 1; level <= depth; level++)
        {
            blocks.Append($" 0 BLOCK 2 N{level}");
            for (var i = 0; i < times; i++)
                blocks.Append($" 0 INSERT 2 N{level - 1}");
            blocks.Append(" 0 ENDBLK");
        }
        return blocks.ToString();
    }
}
