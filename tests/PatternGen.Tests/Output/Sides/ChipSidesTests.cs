using CsCheck;
using PatternGen.Tests.Output.Dxf;

namespace PatternGen.Tests.Output.Sides;

public class ChipSidesTests
{
    private static readonly Contour Square = Contour.Rectangle(new(0, 0), new(2, 2));

    /// <summary>Elementary: n squares in a row have n - 1 sides in common, and an n × m grid n(m-1) + m(n-1).</summary>
    [Theory]
    [InlineData(1, 1, 0)]
    [InlineData(2, 1, 2)]
    [InlineData(5, 1, 8)]
    [InlineData(5, 4, 62)]
    public void Squares_side_by_side_share_their_sides(int columns, int rows, double expected) =>
        Shared(Grid(columns, rows)).ShouldBe(expected, 1e-9);

    [Fact]
    public void Chips_that_touch_at_corners_share_nothing() =>
        Shared(Pattern.OfChips(DxfSamples.Triangle).Repeated(10, 8)).ShouldBe(0);

    [Fact]
    public void Half_a_side_counts_half()
    {
        var bricks = Pattern.OfChips(Square, Square.Transformed(Transform.Move(0.5, 2)));

        Shared(bricks).ShouldBe(1.5, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    [InlineData(30)]
    [InlineData(45)]
    [InlineData(90)]
    [InlineData(179.9999999)]
    public void What_is_shared_does_not_depend_on_how_the_pattern_lies(double degrees)
    {
        var bricks = Grid(7, 1).With(Grid(7, 1).Moved(0.7, 2));

        // Six upright sides in each row, and 14 - 0.7 mm between the rows.
        Shared(bricks.Turned(degrees).Moved(12345.678, -987.654)).ShouldBe(24 + 13.3, 1e-6);
    }

    [Fact]
    public void A_lens_shares_both_its_arcs_with_the_crescents_beside_it()
    {
        // Circles of radius 2 about (0, 0) and (2, 0) meet at (1, ±√3); each arc of the lens sweeps 120°.
        var bulge = Math.Tan(Math.PI / 6);
        Point low = new(1, -Math.Sqrt(3)),
            high = new(1, Math.Sqrt(3));
        // The outer arcs sweep 240°, whose bulge is tan 60°.
        var outer = Math.Tan(Math.PI / 3);
        var lens = new Contour([new(low, bulge), new(high, bulge)]);
        var right = new Contour([new(low, outer), new(high, -bulge)]);
        var left = new Contour([new(high, outer), new(low, -bulge)]);

        Shared(Pattern.OfChips(lens, right, left)).ShouldBe(2 * 2 * (2 * Math.PI / 3), 1e-9);
    }

    [Fact]
    public void Arcs_that_overlap_in_part_share_that_part()
    {
        // Quarter circles of radius 2 about the origin, the second one turned by 30°.
        var quarter = new Contour([new(2, 0, Math.Tan(Math.PI / 8)), new(0, 2), new(0, 0)]);
        var turned = quarter.Transformed(Transform.Rotate(30));

        Shared(Pattern.OfChips(quarter, turned)).ShouldBe(2 * Math.PI / 3, 1e-9);
    }

    [Fact]
    public void A_chip_laid_twice_shares_all_of_itself() =>
        Shared(Pattern.OfChips(Square, Square)).ShouldBe(8, 1e-9);

    [Fact]
    public void Drawn_once_a_grid_has_every_line_once()
    {
        var chains = ChipSides.Chains(Grid(5, 4), 6);

        // 6 lines of 8 mm up and 5 of 10 mm across.
        Length(chains).ShouldBe(6 * 8 + 5 * 10, 1e-9);
    }

    [Fact]
    public void Lines_go_straight_on_through_crossings()
    {
        var chains = ChipSides.Chains(Grid(5, 4), 6);

        // The lines inside are whole; the frame around them is one more run.
        chains.Count(chain => chain.Start.X == chain.End.X && chain.Count == 4).ShouldBe(4);
        chains.Count(chain => chain.Start.Y == chain.End.Y && chain.Count == 5).ShouldBe(3);
        chains
            .Where(chain => chain.Start == chain.End)
            .Sum(chain => chain.Length)
            .ShouldBe(36, 1e-9);
    }

    [Fact]
    public void A_circle_stays_a_circle_where_it_crosses_another()
    {
        // Six circles through one point, cut at every crossing, as a rosette is drawn.
        var sixth = Angle.OfTurn(1.0 / 6);
        var rosette = Enumerable
            .Range(0, 6)
            .Select(i => Point.Origin.Polar(5, sixth * i))
            .Select(centre => new Contour(
                Enumerable
                    .Range(0, 6)
                    .Select(i => Segment.Arc(centre, 5, sixth * i, sixth))
                    .Select(arc => new Vertex(arc.Start, arc.Bulge))
            ));

        var chains = ChipSides.Chains(Pattern.OfChips(rosette), 6);

        chains.Count.ShouldBe(6);
        chains.ShouldAllBe(chain => chain.Start == chain.End);
        chains.ShouldAllBe(chain => Math.Abs(chain.Length - 10 * Math.PI) < 1e-9);
    }

    [Fact]
    public void A_place_that_rounds_up_for_one_chip_and_down_for_the_other_is_one_place()
    {
        // With three decimals 0.0005 lies half-way between two written numbers.
        const double half = 0.0005;
        var left = Contour.Rectangle(new(-2, 0), new(half - 1e-13, 2));
        var right = Contour.Rectangle(new(half + 1e-13, 0), new(2, 2));

        var chains = ChipSides.Chains(Pattern.OfChips(left, right), 3);

        Length(chains).ShouldBe(4 + 4 + 3 * 2, 1e-3);
    }

    [Fact]
    public void Closed_chips_are_longer_than_their_sides_once_by_what_they_share() =>
        Gen.Select(Gen.Int[0, 6], Gen.Int[0, 6], Gen.Int[1, 4], Gen.Int[1, 4], Gen.Double[0, 360])
            .Array[1, 12]
            .Sample(boxes =>
            {
                // Boxes on a coarse grid overlap, touch and coincide in every way; all are turned alike.
                var turn = Transform.Rotate(boxes[0].Item5, new(3, 3));
                var chips = boxes
                    .Select(box =>
                        Contour
                            .Rectangle(
                                new(box.Item1, box.Item2),
                                new(box.Item1 + box.Item3, box.Item2 + box.Item4)
                            )
                            .Transformed(turn)
                    )
                    .ToList();
                var pattern = Pattern.OfChips(chips);

                var chains = ChipSides.Chains(pattern, 6);

                var closed = chips.Sum(chip => chip.Length);
                Math.Abs(closed - Shared(pattern) - Length(chains)).ShouldBeLessThan(1e-6);
                var once = SaveOptions.Default.WithSharedSides(SharedSides.Once);
                DxfLint.Check(DxfSamples.Write(pattern, once)).ShouldBeEmpty();
            });

    [Fact]
    public void There_are_as_few_open_runs_as_the_drawing_allows()
    {
        // A grid of 3 × 3 squares has 8 points where three sides meet, so four runs at least have ends.
        var chains = ChipSides.Chains(Grid(3, 3), 6);

        chains.Count(chain => chain.Start != chain.End).ShouldBe(4);
    }

    [Fact]
    public void A_chip_that_fills_a_hole_shares_all_of_the_holes_edge()
    {
        var hole = new Circle(Point.Origin, 12).ToContour();
        var ring = new Region(new Circle(Point.Origin, 20).ToContour(), hole);
        var pattern = Pattern.OfChips(ring.Parts).With(Pattern.OfChips(hole));

        var once = SaveOptions.Default.WithSharedSides(SharedSides.Once);

        Shared(pattern).ShouldBe(Math.Tau * 12, 1e-9);
        Length(ChipSides.Chains(pattern, 6)).ShouldBe(Math.Tau * (20 + 12), 1e-9);
        DxfLint.Check(DxfSamples.Write(pattern, once)).ShouldBeEmpty();
        DxfSamples
            .Chips(pattern, once)
            .Select(shape => shape.Record.Type)
            .ShouldBe(["CIRCLE", "CIRCLE"]);
    }

    [Fact]
    public void A_chip_in_the_corner_of_a_hole_shares_two_of_its_sides()
    {
        var frame = new Region(
            Contour.Rectangle(new(-5, -5), new(15, 15)),
            Contour.Rectangle(new(0, 0), new(10, 10))
        );

        // Turned, since nothing depends on how the pattern lies.
        var pattern = Pattern.OfChips(frame.Parts).With(Pattern.OfChips(Square)).Turned(33);

        Shared(pattern).ShouldBe(4, 1e-9);
        Length(ChipSides.Chains(pattern, 6)).ShouldBe(80 + 40 + 4, 1e-9);
    }

    [Fact]
    public void Saving_says_what_is_shared()
    {
        var result = Grid(5, 4).Save(Stream.Null, FileFormat.Dxf, For.Machine);

        result.SharedLength.ShouldBe(62, 1e-9);
    }

    private static double Shared(Pattern pattern) => ChipSides.SharedLength(pattern);

    private static double Length(IEnumerable<Chain> chains) => chains.Sum(chain => chain.Length);

    private static Pattern Grid(int columns, int rows) =>
        Pattern.Combine(
            Enumerable
                .Range(0, rows)
                .Select(row => Pattern.OfChips(Square).Repeated(columns, 2).Moved(0, 2 * row))
        );
}
