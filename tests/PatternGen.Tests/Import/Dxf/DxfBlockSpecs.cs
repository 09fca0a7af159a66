namespace PatternGen.Tests.Importing.Dxf;

public sealed class DxfBlockSpecs
{
    private const string Part =
        "0 BLOCK 8 0 2 PART 70 0 10 1 20 1 0 LINE 8 0 10 1 20 1 11 3 21 1 0 LINE 8 CUT 10 3 20 1 11 3 21 2 0 ENDBLK 8 0";

    [Fact]
    public void A_block_is_scaled_turned_and_put_by_its_base_point()
    {
        var chain = DxfFile
            .Import(DxfFile.WithBlocks(Part, "0 INSERT 2 part 10 10 20 20 41 2 42 3 50 90"))
            .Chains.ShouldHaveSingleItem();

        // (1, 1) goes to (10, 20); x by 2 turned up, y by 3 turned to the left.
        chain
            .Vertices.Select(corner => corner.Point)
            .ShouldBe([new(10, 20), new(10, 24), new(7, 24)]);
    }

    [Fact]
    public void A_block_repeats_in_columns_and_rows_turned_with_it()
    {
        var drawing = DxfFile.Import(
            DxfFile.WithBlocks(Part, "0 INSERT 2 PART 10 0 20 0 50 90 70 3 71 2 44 10 45 20")
        );

        drawing
            .Chains.Select(chain => chain.Start)
            .ShouldBe([new(0, 0), new(0, 10), new(0, 20), new(-20, 0), new(-20, 10), new(-20, 20)]);
    }

    [Fact]
    public void A_turned_block_in_a_stretched_one_is_sheared()
    {
        var chain = DxfFile
            .Import(
                DxfFile.WithBlocks(
                    $"{Part} 0 BLOCK 2 TURNED 10 0 20 0 0 INSERT 2 PART 10 5 20 0 50 90 0 ENDBLK",
                    "0 INSERT 2 TURNED 10 100 20 0 41 2 42 1"
                )
            )
            .Chains.ShouldHaveSingleItem();

        // Two along x and one along y, turned up and to the left from (5, 0), and x doubled.
        chain
            .Vertices.Select(corner => corner.Point)
            .ShouldBe([new(110, 0), new(110, 2), new(108, 2)]);
    }

    [Fact]
    public void A_circle_in_a_stretched_block_is_an_ellipse()
    {
        var drawing = DxfFile.Import(
            DxfFile.WithBlocks(
                "0 BLOCK 2 ROUND 10 0 20 0 0 CIRCLE 10 0 20 0 40 2 0 ENDBLK",
                "0 INSERT 2 ROUND 10 5 20 0 41 2 42 -1.5 50 90"
            )
        );

        var ellipse = drawing.Contours.ShouldHaveSingleItem();
        // Half axes 4, upright, and 3.
        ellipse.Area.ShouldBe(12 * Math.PI, 0.01 * 22.2);
        ellipse.Extents.Height.ShouldBe(8, 0.021);
        ellipse.Extents.Width.ShouldBe(6, 0.021);
        ellipse.Extents.Centre.DistanceTo(new(5, 0)).ShouldBeLessThan(0.02);
    }

    [Fact]
    public void What_lies_on_layer_0_of_a_block_lies_on_the_layer_of_the_block()
    {
        var text = DxfFile.WithBlocks(Part, "0 INSERT 8 MARK 2 PART 10 0 20 0");

        Length("MARK").ShouldBe(2);
        Length("cut").ShouldBe(1);
        Length("0").ShouldBe(0);

        double Length(string layer) =>
            DxfFile
                .Import(text, ImportSettings.Default.WithLayers(layer))
                .Chains.Sum(chain => chain.Length);
    }

    [Theory]
    [InlineData("62 -7", 0, 1)]
    [InlineData("62 7 70 1", 0, 0)]
    [InlineData("62 7 70 4", 2, 1)]
    public void Layers_that_are_off_or_frozen_are_not_drawn(string state, double zero, double cut)
    {
        var text =
            DxfFile.Groups(
                "0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC 0 SECTION 2 TABLES"
                    + $" 0 TABLE 2 LAYER 70 1 0 LAYER 2 mark {state} 6 Continuous 0 ENDTAB 0 ENDSEC"
                    + $" 0 SECTION 2 BLOCKS {Part} 0 ENDSEC 0 SECTION 2 ENTITIES"
                    + " 0 INSERT 8 MARK 2 PART 10 0 20 0 0 LINE 8 MARK 10 50 20 0 11 70 21 0"
            ) + DxfFile.Groups("0 ENDSEC 0 EOF");

        var drawing = DxfFile.Import(text);

        drawing
            .Chains.Where(chain => chain.Start.X < 40)
            .Sum(chain => chain.Length)
            .ShouldBe(zero + cut);
        drawing.Chains.Any(chain => chain.Start.X > 40).ShouldBe(zero > 0);
        if (zero == 0)
            drawing.Notes.ShouldContain(note =>
                note.Kind == ImportNoteKind.Skipped && note.What.Contains("layer \"MARK\"")
            );
    }

    [Fact]
    public void What_a_block_changes_is_told_where_it_is_shown()
    {
        var drawing = DxfFile.Import(
            DxfFile.WithBlocks(
                "0 BLOCK 2 A 0 LWPOLYLINE 38 5 43 1 10 0 20 0 10 1 20 0 0 ENDBLK",
                "0 INSERT 2 A 70 3 44 9"
            )
        );

        drawing
            .Notes.Select(note => note.ToString())
            .ShouldBe([
                "Changed: drawn at a height, laid flat, 3 times, first at line 20",
                "Changed: width of a polyline, its centre line taken, 3 times, first at line 20",
            ]);
    }

    [Fact]
    public void What_no_block_shows_is_not_told()
    {
        var drawing = DxfFile.Import(
            DxfFile.WithBlocks(
                "0 BLOCK 2 *D1 10 0 20 0 0 MTEXT 10 0 20 0"
                    + " 0 LWPOLYLINE 38 5 43 1 10 0 20 0 10 1 20 0 0 ENDBLK",
                DxfFile.Line(0, 0, 1, 0)
            )
        );

        drawing.Notes.ShouldBeEmpty();
    }
}
