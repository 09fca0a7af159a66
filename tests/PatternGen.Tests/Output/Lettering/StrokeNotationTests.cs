namespace PatternGen.Tests.Output;

public sealed class StrokeNotationTests
{
    [Fact]
    public void Points_are_joined_by_lines_and_strokes_parted_by_bars()
    {
        var strokes = StrokeNotation.Strokes("0,10 5,0 10,10 | 2,6 8,6").ToArray();

        strokes.Select(stroke => stroke.Count).ShouldBe([2, 1]);
        strokes[0].End.ShouldBe(new Point(10, 10));
        strokes[1].SegmentAt(0).ShouldBe(new Segment(new(2, 6), new(8, 6)));
    }

    [Fact]
    public void A_single_point_is_a_small_ring()
    {
        var dot = StrokeNotation.Strokes("5,90").ShouldHaveSingleItem();

        dot.Start.ShouldBe(dot.End);
        dot.Extents.Centre.DistanceTo(new(5, 90)).ShouldBeLessThan(1e-12);
        dot.Extents.Width.ShouldBe(dot.Extents.Height, 1e-12);
    }

    [Fact]
    public void One_arc_is_enough_where_both_directions_fit_it()
    {
        var quarter = StrokeNotation.Strokes("10,0n ~ 0,10w").ShouldHaveSingleItem().SegmentAt(0);

        quarter.Radius.ShouldBe(10, 1e-12);
        quarter.Centre.DistanceTo(Point.Origin).ShouldBeLessThan(1e-12);
    }

    [Theory]
    [InlineData("0,0n ~ 30,50e")] // a quarter of an oval
    [InlineData("0,0e ~ 40,20e")] // an S on its side
    [InlineData("0,0@75 ~ 30,-10@200")] // more than a half turn
    [InlineData("0,0 0,40 ~ 20,60e ~ 40,35 40,0")] // an arch between two stems
    [InlineData("0,20 ~ 15,30e ~ 30,12")] // directions given in the middle only
    public void Curves_run_smoothly_into_what_comes_before_and_after(string notation)
    {
        var segments = StrokeNotation.Strokes(notation).Single().Segments.ToArray();

        segments.Length.ShouldBeGreaterThan(1);
        foreach (var (before, after) in segments.Zip(segments.Skip(1)))
            (before.TangentAt(before.Length) - after.TangentAt(0)).Length.ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void Curves_pass_their_points_in_the_direction_written()
    {
        var segments = StrokeNotation.Strokes("0,0@30 ~ 20,40@150").Single().Segments.ToArray();

        segments[0].TangentAt(0).Direction.Degrees.ShouldBe(30, 1e-9);
        segments[^1].TangentAt(segments[^1].Length).Direction.Degrees.ShouldBe(150, 1e-9);
    }

    [Fact]
    public void A_curve_without_any_direction_is_a_mistake() =>
        Should.Throw<FormatException>(() => StrokeNotation.Strokes("0,0 ~ 10,10").ToArray());

    [Fact]
    public void A_sheet_adds_strokes_to_an_earlier_character()
    {
        // "Ø =O  5,-7 73,107": the strokes and margins of O, and a bar through it.
        var (letter, crossed) = (Alphabet.Find('O'), Alphabet.Find('Ø'));

        crossed.Advance.ShouldBe(letter.Advance);
        crossed.Strokes.Count.ShouldBe(letter.Strokes.Count + 1);
        crossed.Strokes[^1].Count.ShouldBe(1);
    }
}
