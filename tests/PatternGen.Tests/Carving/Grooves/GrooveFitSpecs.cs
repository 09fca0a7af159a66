namespace PatternGen.Tests.Carving.Grooves;

/// <summary>What a bit can't cut.</summary>
public class GrooveFitSpecs
{
    /// <summary>Two 6 mm squares, 6 mm across their deepest point, and one of 13 mm.</summary>
    private static Pattern Squares =>
        Pattern
            .OfChips(GrooveShapes.Square)
            .Repeated(2, 8)
            .With(Pattern.OfChips(Contour.Rectangle(new(0, 20), new(13, 33))));

    [Fact]
    public void A_bit_as_wide_as_the_widest_chip_will_do()
    {
        Squares.GroovePaths(VBit.Of(60, 13)).PathCount.ShouldBe(6);
        Should.Throw<PatternException>(() => Squares.GroovePaths(VBit.Of(60, 12.99)));
    }

    /// <summary>6.5 × tan 60° = 11.258 mm deep; the bit reaches 6 × tan 60° = 10.392 mm.</summary>
    [Fact]
    public void A_chip_wider_than_the_bit_is_refused_with_what_would_work()
    {
        var error = Should.Throw<PatternException>(() => Squares.GroovePaths(VBit.Of(60, 12)));
        error.Message.ShouldContain("chip 2.1 at (6.5, 26.5)");
        error.Message.ShouldContain("13 mm across");
        error.Message.ShouldContain("11.258 mm deep");
        error.Message.ShouldContain("10.392 mm");
        error.Place.ShouldBe(new Point(6.5, 26.5));
        error.Remedies[0].ShouldBe("a bit of at least 13 mm, or chips of at most 92 % of the size");
        Squares.Scaled(0.92).GroovePaths(VBit.Of(60, 12)).LeftOutCount.ShouldBe(0);
        Squares.GroovePaths(VBit.Of(60, 13)).LeftOutCount.ShouldBe(0);
    }

    [Fact]
    public void I_can_leave_out_what_the_bit_can_not_cut_and_learn_which()
    {
        var paths = Squares.GroovePaths(VBit.Of(60, 12), uncuttable: Uncuttable.LeaveOut);
        paths.PathCount.ShouldBe(4);
        paths.LeftOutCount.ShouldBe(1);
        var left = paths.LeftOut.ShouldHaveSingleItem();
        left.Chip.ShouldBe(new ChipId(2, 1));
        left.Reason.ShouldContain("13 mm across");
        paths.Paths.ShouldAllBe(path => path.Chip != new ChipId(2, 1));
        paths.Notes().ShouldContain("1 left out, which this bit can't cut: carve them by hand");
    }

    [Fact]
    public void Many_chips_that_are_too_wide_are_counted()
    {
        var error = Should.Throw<PatternException>(() =>
            Pattern.OfChips(GrooveShapes.Square).Repeated(50, 7).GroovePaths(VBit.Of(60, 3))
        );
        error.Message.ShouldContain("and 47 more");
    }

    [Fact]
    public void A_stab_cut_chip_is_refused()
    {
        var pattern = Pattern
            .OfChips(Contour.Polygon(new Point(0, 0), new(6, 0), new(3, 4)))
            .WithCut(ChipCut.Stabbed(2));
        var error = Should.Throw<PatternException>(() => pattern.GroovePaths(VBit.Of()));
        error.Message.ShouldContain("chip 1.1");
        error.Message.ShouldContain("stab-cut");
    }

    /// <summary>Walls of 65° take a bit of 180° - 2 × 65° = 50° included.</summary>
    [Fact]
    public void A_chip_with_a_wall_angle_of_its_own_needs_a_bit_of_that_angle()
    {
        var pattern = Pattern.OfChips(GrooveShapes.Lens).WithCut(ChipCut.WallsAt(65));
        var error = Should.Throw<PatternException>(() => pattern.GroovePaths(VBit.Of(60, 12)));
        error.Remedies[0].ShouldBe("a bit of 50° included for the walls of 65°");
        pattern.GroovePaths(VBit.Of(50, 12)).PathCount.ShouldBe(1);
    }

    [Fact]
    public void A_line_cut_wider_than_the_bit_is_refused()
    {
        var pattern = Pattern.OfLineCuts(new LineCut(Chain.Line(new(0, 0), new(30, 0)), 7));
        var error = Should.Throw<PatternException>(() => pattern.GroovePaths(VBit.Of(60, 6)));
        error.Message.ShouldContain("line cut 1 at (0, 0)");
        pattern
            .GroovePaths(VBit.Of(60, 6), uncuttable: Uncuttable.LeaveOut)
            .LeftOut.Single()
            .LineCut.ShouldBe(1);
    }
}
