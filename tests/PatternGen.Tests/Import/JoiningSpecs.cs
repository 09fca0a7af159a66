using CsCheck;
using PatternGen.Tests.Importing.Dxf;

namespace PatternGen.Tests.Importing;

public sealed class JoiningSpecs
{
    [Fact]
    public void Loose_lines_in_any_order_and_direction_become_one_contour()
    {
        Gen.Select(
                Gen.Int[3, 40],
                Gen.Shuffle(Enumerable.Range(0, 40).ToArray()),
                Gen.Bool.Array[40]
            )
            .Sample(
                (count, order, turned) =>
                {
                    var ring = Polygon(count, 50);
                    var lines = order
                        .Where(side => side < count)
                        .Select(side => (From: ring[side], To: ring[(side + 1) % count]))
                        .Select((line, i) => turned[i] ? (line.To, line.From) : line);

                    var drawing = Import([.. lines]);

                    drawing.Chains.ShouldBeEmpty();
                    drawing.Notes.ShouldBeEmpty();
                    var contour = drawing.Contours.ShouldHaveSingleItem();
                    contour.Count.ShouldBe(count);
                    // n / 2 · R² · sin(360° / n), a regular polygon.
                    contour.Area.ShouldBe(count / 2.0 * 2500 * Math.Sin(Math.Tau / count), 1e-8);
                },
                iter: 100
            );
    }

    [Fact]
    public void A_contour_starts_and_runs_as_its_first_line_in_the_file()
    {
        var contour = Import(
            (new(10, 10), new(0, 10)),
            (new(0, 0), new(0, 10)),
            (new(10, 0), new(0, 0)),
            (new(10, 10), new(10, 0))
        )
            .Contours.ShouldHaveSingleItem();

        contour
            .Vertices.Select(corner => corner.Point)
            .ShouldBe([new(10, 10), new(0, 10), new(0, 0), new(10, 0)]);
    }

    [Fact]
    public void Ends_a_little_apart_are_brought_together_and_the_widest_gap_is_told()
    {
        var drawing = Import(
            (new(0, 0), new(10, 0)),
            (new(10.004, 0), new(10, 10)),
            (new(10, 10.008), new(0, 0))
        );

        var contour = drawing.Contours.ShouldHaveSingleItem();
        contour.Count.ShouldBe(3);
        contour.Validate().IsValid.ShouldBeTrue();
        contour.Area.ShouldBe(50, 0.1);
        drawing
            .Notes.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe(
                "Changed: loose ends brought together over a gap, the widest 0.008 mm, 2 times, first at (10, 10.004) mm"
            );
        drawing.Accuracy.ShouldBe(0.008, 1e-9);
    }

    [Fact]
    public void Ends_that_meet_are_joined_before_ends_that_are_near()
    {
        // Two squares 0.005 apart: nothing of the one belongs to the other.
        var drawing = Import([.. Square(0, 0), .. Square(10.005, 0)]);

        drawing.Contours.Count.ShouldBe(2);
        drawing.Contours.ShouldAllBe(square => square.Count == 4);
    }

    [Fact]
    public void A_gap_that_stays_is_told_where_and_how_wide()
    {
        var drawing = Import(
            (new(0, 0), new(10, 0)),
            (new(10, 0), new(10, 10)),
            (new(10, 10), new(0.35, 0))
        );

        drawing.Contours.ShouldBeEmpty();
        drawing.Chains.Count.ShouldBe(1);
        var gap = drawing.Gaps.ShouldHaveSingleItem();
        gap.Width.ShouldBe(0.35, 1e-12);
        gap.From.ShouldBe(new(0, 0));
        var error = Should.Throw<PatternException>(() => drawing.Outline());
        error.Message.ShouldContain("0.35 mm from (0, 0) to (0.35, 0)");
        error.Remedies[0].ShouldBe("ImportSettings.Default.WithJoinWithin(0.35)");
        error.Place.ShouldBe(new Point(0, 0));
        var text = Text(
            (new(0, 0), new(10, 0)),
            (new(10, 0), new(10, 10)),
            (new(10, 10), new(0.35, 0))
        );
        DxfFile
            .Import(text, ImportSettings.Default.WithJoinWithin(0.36))
            .Outline()
            .Contours.ShouldHaveSingleItem();
    }

    [Fact]
    public void At_a_fork_only_what_goes_straight_on_is_joined()
    {
        // A line of two halves, and one that ends on their joint.
        var drawing = Import(
            (new(0, 0), new(10, 0)),
            (new(10, 0), new(20, 0)),
            (new(10, 0), new(10, 5))
        );

        drawing.Chains.Select(chain => chain.Length).ShouldBe([20, 5]);
        drawing.Notes.ShouldBeEmpty();
    }

    [Fact]
    public void A_fork_that_does_not_say_what_belongs_together_stays_open_and_is_told()
    {
        var drawing = Import(
            (new(0, 0), new(10, 0)),
            (new(10, 0), new(17, 7)),
            (new(10, 0), new(17, -7))
        );

        drawing.Chains.Count.ShouldBe(3);
        drawing
            .Notes.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe(
                "LeftOpen: 3 ends in one point, which do not say how they belong together, at (10, 0) mm"
            );
        Should
            .Throw<PatternException>(() => drawing.Outline())
            .Message.ShouldContain("more than two ends meet in one point");
    }

    [Fact]
    public void What_is_drawn_twice_counts_once_whatever_its_direction_and_start()
    {
        var square = Square(0, 0);
        (Point, Point)[] back = [.. square.Select(line => (line.To, line.From)).Reverse()];
        var ring = "0 LWPOLYLINE 70 1 10 30 20 0 10 40 20 0 10 40 20 10";
        var turned = "0 LWPOLYLINE 70 1 10 40 20 10 10 40 20 0 10 30 20 0";

        var drawing = DxfFile.Import(DxfFile.Of([.. Lines([.. square, .. back]), ring, turned]));

        drawing.Contours.Count.ShouldBe(2);
        drawing
            .Notes.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe("Skipped: curve drawn before, 5 times, first at (0, 0) mm");
    }

    [Fact]
    public void A_ring_whose_sides_its_neighbours_draw_too_stays()
    {
        // A triangle, all of whose sides are drawn before by the three round it.
        string[] rings =
        [
            Ring(new(0, 0), new(2, 0), new(1, 1)),
            Ring(new(2, 0), new(4, 0), new(3, 1)),
            Ring(new(1, 1), new(3, 1), new(2, 2)),
            Ring(new(2, 0), new(3, 1), new(1, 1)),
        ];

        DxfFile.Import(DxfFile.Of(rings)).Contours.Count.ShouldBe(4);

        static string Ring(params Point[] corners) =>
            "0 LWPOLYLINE 70 1 " + string.Join(' ', corners.Select(p => $"10 {p.X} 20 {p.Y}"));
    }

    [Fact]
    public void Scraps_that_are_shorter_than_what_is_joined_are_skipped_and_told()
    {
        var drawing = Import([.. Square(0, 0), (new(10, 5), new(10.006, 5))]);

        drawing.Contours.ShouldHaveSingleItem();
        drawing.Chains.ShouldBeEmpty();
        drawing
            .Notes.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe(
                "Skipped: curve of no more than 0.01 mm, within which ends are joined, at (10, 5) mm"
            );
    }

    [Fact]
    public void A_polyline_that_ends_where_it_starts_is_closed_without_its_flag()
    {
        var drawing = DxfFile.Import(
            DxfFile.Of("0 LWPOLYLINE 70 0 10 0 20 0 42 1 10 10 20 0 42 1 10 0 20 0")
        );

        drawing.Contours.ShouldHaveSingleItem().Area.ShouldBe(25 * Math.PI, 1e-9);
    }

    [Fact]
    public Task A_hundred_thousand_lines_are_joined_in_time_that_grows_as_their_number() =>
        Patience.WithinMinutes(() =>
        {
            var lines = Enumerable
                .Range(0, 25_000)
                .SelectMany(i => Square(i % 158 * 12, i / 158 * 12))
                .ToArray();
            new Random(7).Shuffle(lines);

            Import(lines).Contours.Count.ShouldBe(25_000);
        });

    private static Point[] Polygon(int count, double radius) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => Point.Origin.Polar(radius, Angle.OfTurn((double)i / count))),
        ];

    private static (Point From, Point To)[] Square(double x, double y)
    {
        Point[] corners = [new(x, y), new(x + 10, y), new(x + 10, y + 10), new(x, y + 10)];
        return [.. corners.Select((corner, i) => (corner, corners[(i + 1) % 4]))];
    }

    private static ImportedDrawing Import(params (Point From, Point To)[] lines) =>
        DxfFile.Import(Text(lines));

    private static string Text(params (Point From, Point To)[] lines) => DxfFile.Of(Lines(lines));

    private static string[] Lines((Point From, Point To)[] lines) =>
        [.. lines.Select(line => DxfFile.Line(line.From.X, line.From.Y, line.To.X, line.To.Y))];
}
