namespace PatternGen.Tests.Compass;

/// <summary>Dividing a circle by compass and straightedge, or with the dividers.</summary>
public class CircleDividingSpecs
{
    public static TheoryData<int> Counts => [.. Enumerable.Range(2, 35), 60, 72, 360];

    public static TheoryData<int> Stepped =>
        [.. Enumerable.Range(7, 30).Where(count => count is not (8 or 10 or 12 or 16))];

    [Theory]
    [MemberData(nameof(Counts))]
    public void The_instructions_alone_rebuild_every_point_and_line(int count) =>
        Divided(count, 40).ShouldRebuild();

    [Theory]
    [InlineData(0.01)]
    [InlineData(1)]
    [InlineData(900)]
    public void They_do_at_any_size(double radius)
    {
        foreach (var count in (int[])[3, 5, 7, 10, 16, 36])
            Divided(count, radius).ShouldRebuild();
    }

    [Fact]
    public void A_setting_off_by_a_millionth_is_noticed() =>
        Should.Throw<ShouldAssertException>(() =>
            Divided(7, 40).ShouldRebuild(setting => setting + 1e-6)
        );

    [Theory]
    [MemberData(nameof(Counts))]
    public void The_points_lie_evenly_and_counter_clockwise_from_the_top(int count)
    {
        IReadOnlyList<MarkedPoint> round = [];
        CompassDrawing.Of(pencil => round = pencil.DivideCircle(Rim(pencil, 40), count));

        round.Count.ShouldBe(count);
        for (var i = 0; i < count; i++)
        {
            // By definition of the regular polygon, in degrees from the x axis.
            var direction = (90 + 360.0 * i / count) * Math.PI / 180;
            round[i].Point.X.ShouldBe(10 + 40 * Math.Cos(direction), 1e-12);
            round[i].Point.Y.ShouldBe(-5 + 40 * Math.Sin(direction), 1e-12);
        }
    }

    [Theory]
    [MemberData(nameof(Counts))]
    public void The_points_are_numbered_in_their_order_round_the_circle(int count)
    {
        IReadOnlyList<MarkedPoint> round = [];
        CompassDrawing.Of(pencil => round = pencil.DivideCircle(Rim(pencil, 40), count));

        round
            .Select(point => point.Label)
            .ShouldBe(Enumerable.Range(1, count).Select(number => $"{number}"));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(12)]
    [InlineData(16)]
    public void An_exact_construction_measures_nothing_but_the_radius(int count)
    {
        // Euclid IV.15 for 3, 6 and 12, IV.6 for 4, 8 and 16, IV.11 and XIII.10 for 5 and 10: no ruler.
        Divided(count, 40)
            .Instructions.Count(step => step.Kind is StepKind.SetRadius && step.From.Count == 0)
            .ShouldBe(1);
        // So whatever the radius is read as, the round closes.
        new Replay(
            Divided(count, 40.0371).Instructions,
            setting => Math.Round(setting, 1)
        ).Miss.ShouldBe(0, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Stepped))]
    public void A_rounded_setting_misses_by_the_closing_error_that_is_stated(int count)
    {
        var drawing = Divided(count, 40);
        var division = drawing.Instructions[^1].Division.ShouldNotBeNull();

        foreach (var reading in (double[])[0.1, 0.25])
        {
            var replay = new Replay(
                drawing.Instructions,
                setting => Math.Round(setting / reading) * reading
            );

            replay.Miss.ShouldBe(division.ClosingError(reading), 1e-9);
        }
        new Replay(drawing.Instructions).Miss.ShouldBe(0, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Stepped))]
    public void Stepping_on_a_larger_circle_misses_by_what_is_stated_for_it(int count)
    {
        // Joshua Rose, Modern Machine-Shop Practice: three times as large leaves a third.
        IReadOnlyList<MarkedPoint> round = [];
        var drawing = CompassDrawing.Of(pencil =>
        {
            var rim = Rim(pencil, 40);
            var start = pencil.MarkOn(rim, Angle.FromDegrees(90));
            round = pencil.DivideOnLargerCircle(rim, count, start, 3);
        });
        drawing.ShouldRebuild();
        round.Count.ShouldBe(count);

        var replay = new Replay(drawing.Instructions, setting => Math.Round(setting * 4) / 4);

        (replay.Miss / 3).ShouldBe(
            CircleDivision.Of(count, 40).OnLargerCircle(3).ClosingError(0.25),
            1e-9
        );
        // The last mark brought in is off by all steps but one, along the circle of 40 mm.
        var last = replay.Points[round[^1].Label] - new System.Numerics.Complex(10, -5);
        var right = System.Numerics.Complex.FromPolarCoordinates(
            1,
            Math.PI / 2 - 2 * Math.PI / count
        );
        ((last / right).Phase * 40).ShouldBe(replay.Miss / 3 * (count - 1) / count, 1e-9);
    }

    [Fact]
    public void The_side_of_the_pentagon_squared_is_those_of_hexagon_and_decagon_squared()
    {
        // Euclid XIII.10, in one circle; and XIII.9: hexagon and decagon sides are in the golden ratio.
        var pentagon = LastSetting(5);
        var hexagon = LastSetting(6);
        var decagon = LastSetting(10);

        (pentagon * pentagon).ShouldBe(hexagon * hexagon + decagon * decagon, 1e-9);
        (hexagon / decagon).ShouldBe((1 + Math.Sqrt(5)) / 2, 1e-12);
    }

    [Fact]
    public void The_radius_walks_round_in_six_and_a_second_six_from_midway_gives_twelve()
    {
        // Common practice, no source.
        MarkedPoint[] tips = [];
        var drawing = CompassDrawing.Of(pencil =>
        {
            var rim = Rim(pencil, 40);
            var start = pencil.MarkOn(rim, Angle.FromDegrees(0));
            var six = pencil.Walk(rim, start, 6);
            var midway = pencil.BisectArc(rim, six[0], six[1]);
            tips = [.. six, .. pencil.Walk(rim, midway, 6)];
        });

        tips.Length.ShouldBe(12);
        drawing
            .Instructions.Where(step => step.Kind == StepKind.Walk)
            .ShouldAllBe(step => step.Closes);
        tips.Select(tip => (tip.Point - new Point(10, -5)).Direction.Normalized().Degrees)
            .Order()
            .Zip(Enumerable.Range(0, 12), (degrees, i) => Math.Abs(degrees - 30 * i))
            .ShouldAllBe(off => off < 1e-9);
    }

    [Fact]
    public void A_start_with_a_letter_keeps_it()
    {
        IReadOnlyList<MarkedPoint> round = [];
        CompassDrawing.Of(pencil =>
        {
            var rim = Rim(pencil, 40);
            round = pencil.DivideCircle(rim, 8, pencil.Mark(50, -5));
        });

        round.Select(point => point.Label).ShouldBe(["B", "1", "2", "3", "4", "5", "6", "7"]);
    }

    [Fact]
    public void Every_second_of_six_is_a_triangle()
    {
        var walk = Divided(3, 40).Instructions[^1];

        walk.Count.ShouldBe(6);
        walk.Every.ShouldBe(2);
        walk.Marked.Count.ShouldBe(2);
    }

    private static double LastSetting(int count) =>
        Divided(count, 40).Instructions[^1].Setting!.Value;

    private static CompassDrawing Divided(int count, double radius) =>
        CompassDrawing.Of(pencil => pencil.DivideCircle(Rim(pencil, radius), count));

    private static DrawnCurve Rim(Pencil pencil, double radius)
    {
        var centre = pencil.Mark(10, -5);
        pencil.SetRadius(radius);
        return pencil.Circle(centre);
    }
}
