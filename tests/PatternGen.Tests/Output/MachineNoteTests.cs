namespace PatternGen.Tests.Output;

public class MachineNoteTests
{
    [Fact]
    public void The_note_says_what_it_is_how_large_and_in_which_unit() =>
        MachineNote
            .Place(Samples.Board(), Wording.English)!
            .Text.ShouldBe("Practice board, 130 × 110 mm, 6 chips, 1 unit = 1 mm");

    [Fact]
    public void A_size_in_the_name_is_not_said_again() =>
        MachineNote
            .Place(Samples.Rail().Named("Rail 742.5 × 36 mm"), Wording.English)!
            .Text.ShouldStartWith("Rail 742.5 × 36 mm, 182 chips");

    [Fact]
    public void The_note_lies_on_the_wood_below_the_carving()
    {
        var box = MachineNote.Place(Samples.Rail(), Wording.English)!.Box();
        box.Min.X.ShouldBeGreaterThanOrEqualTo(1);
        box.Min.Y.ShouldBeGreaterThanOrEqualTo(1);
        box.Max.Y.ShouldBeLessThanOrEqualTo(13);
    }

    [Fact]
    public void Inside_a_carved_border_the_note_stands_in_the_middle()
    {
        var board = Board(200, 100);
        var row = Square(4).Repeated(48, 4).Moved(4, 4);
        var column = Square(4).Repeated(22, 4).Turned(90).Moved(8, 8);
        var frame = Pattern.Combine(board, row, row.Moved(0, 84), column, column.Moved(184, 0));
        var box = MachineNote.Place(frame, Wording.English)!.Box();
        box.Centre.X.ShouldBe(100, 1e-9);
        box.Centre.Y.ShouldBe(50, 1e-9);
    }

    [Fact]
    public void The_note_stands_on_the_ground_in_a_chip_but_not_in_the_chip()
    {
        var large = Contour.Rectangle(new(1, 1), new(199, 99));
        var island = Contour.Rectangle(new(20, 30), new(180, 70));
        var ring = Pattern.Combine(
            Board(200, 100),
            Pattern.OfChips(new Region(large, island).Parts)
        );
        var whole = Pattern.Combine(Board(200, 100), Pattern.OfChips(large));

        var box = MachineNote.Place(ring, Wording.English)!.Box();

        island.Extents.Contains(box).ShouldBeTrue();
        MachineNote.Place(whole, Wording.English).ShouldBeNull();
    }

    [Fact]
    public void Without_room_there_is_no_note()
    {
        MachineNote.Place(Board(60, 100), Wording.English).ShouldBeNull();
        MachineNote.Place(Board(200, 4), Wording.English).ShouldBeNull();
        MachineNote.Place(Square(4), Wording.English).ShouldBeNull();
        var covered = Pattern.Combine(Board(200, 20), Square(20).Repeated(10, 20));
        MachineNote.Place(covered, Wording.English).ShouldBeNull();
    }

    /// <summary>The corners of the box lie on the disk's bounds but off the disk.</summary>
    [Fact]
    public void On_a_round_board_the_note_keeps_to_the_wood()
    {
        var disk = new Circle(new(75, 75), 75).ToContour();
        var box = MachineNote.Place(Pattern.OfStock(disk), Wording.English)!.Box();
        foreach (
            var corner in new[]
            {
                box.Min,
                box.Max,
                new(box.Min.X, box.Max.Y),
                new(box.Max.X, box.Min.Y),
            }
        )
            corner.DistanceTo(new(75, 75)).ShouldBeLessThan(74);
    }

    [Fact]
    public void The_note_keeps_out_of_holes()
    {
        var hole = new Circle(new(70, 6), 2).ToContour().Reversed();
        var holed = Pattern.Combine(Board(200, 12), Pattern.OfStock(hole));
        MachineNote.Place(Board(200, 12), Wording.English).ShouldNotBeNull();
        MachineNote.Place(holed, Wording.English).ShouldBeNull();
    }

    private static Pattern Board(double width, double height) =>
        Pattern.OfStock(Contour.Rectangle(Point.Origin, new(width, height)));

    private static Pattern Square(double side) =>
        Pattern.OfChips(Contour.Rectangle(Point.Origin, new(side, side)));
}
