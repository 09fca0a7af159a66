using CsCheck;

namespace PatternGen.Tests.Compass;

/// <summary>The other constructions of the compass room, each checked against a proposition of Euclid and by replay.</summary>
public class ConstructionSpecs
{
    private static readonly Gen<Point> Places =
        from x in Gen.Double[-200, 200]
        from y in Gen.Double[-200, 200]
        select new Point(x, y);

    private static readonly Gen<(Point, Point)> Pairs = Gen.Select(Places, Places)
        .Where((a, b) => a.DistanceTo(b) > 1);

    [Fact]
    public void Bisecting_finds_the_middle_and_a_line_square_to_the_way() // Euclid I.10
    {
        Gen.Select(Pairs, Gen.Double[1, 300])
            .Sample(
                (ends, setting) =>
                {
                    MarkedLine? halved = null;
                    var (a, b) = ends;
                    var drawing = CompassDrawing.Of(pencil =>
                    {
                        pencil.SetRadius(setting);
                        halved = pencil.Bisect(pencil.Mark(a), pencil.Mark(b), PencilLine.Drawn);
                    });

                    var middle = halved!.Point.Point;
                    middle.DistanceTo(a).ShouldBe(middle.DistanceTo(b), 1e-9);
                    middle.DistanceTo(a).ShouldBe(a.DistanceTo(b) / 2, 1e-9);
                    var line = halved.Line.Curve.Segment;
                    line.Chord.Unit().Dot((b - a).Unit()).ShouldBe(0, 1e-9);
                    line.DistanceTo(middle).ShouldBe(0, 1e-9);
                    drawing.ShouldRebuild();
                }
            );
    }

    [Fact]
    public void A_setting_too_narrow_or_wide_for_crossing_arcs_is_replaced_in_a_step_of_its_own()
    {
        foreach (var setting in (double[])[10, 49, 500])
        {
            var kinds = Kinds(pencil =>
            {
                pencil.SetRadius(setting);
                pencil.Bisect(pencil.Mark(0, 0), pencil.Mark(100, 0), PencilLine.Drawn);
            });
            kinds[^2..].ShouldBe([StepKind.SetRadius, StepKind.Bisect]);
        }
        Kinds(pencil =>
            {
                pencil.SetRadius(80);
                pencil.Bisect(pencil.Mark(0, 0), pencil.Mark(100, 0), PencilLine.Drawn);
            })
            .Count(kind => kind == StepKind.SetRadius)
            .ShouldBe(1);
    }

    [Fact]
    public void A_perpendicular_stands_square_through_its_point() // Euclid I.11 and I.12
    {
        Gen.Select(Pairs, Places, Gen.Int[0, 10], Gen.Bool)
            .Sample(
                (ends, place, tenths, isOnLine) =>
                {
                    var (a, b) = ends;
                    var at = isOnLine ? a.Towards(b, tenths / 10.0) : place;
                    MarkedLine? square = null;
                    var drawing = CompassDrawing.Of(pencil =>
                    {
                        var line = pencil.Join(pencil.Mark(a), pencil.Mark(b));
                        pencil.SetRadius(900);
                        var mark = pencil.Mark(at);
                        // A point next to one that is marked is that one: points within the tolerance are the same.
                        mark.Point.DistanceTo(at).ShouldBeLessThan(1e-6);
                        at = mark.Point;
                        square = pencil.Perpendicular(line, mark);
                    });

                    var drawn = square!.Line.Curve.Segment;
                    drawn.Chord.Unit().Dot((b - a).Unit()).ShouldBe(0, 1e-9);
                    drawn.DistanceTo(at).ShouldBe(0, 1e-9);
                    var foot = square.Point.Point;
                    (foot - a).Cross((b - a).Unit()).ShouldBe(0, 1e-6);
                    if (isOnLine)
                        foot.DistanceTo(at).ShouldBe(0, 1e-9);
                    drawing.ShouldRebuild();
                }
            );
    }

    /// <summary>Farther off than the drawing's tolerance, nearer than any eye sees: it gets a foot of its own.</summary>
    [Theory]
    [InlineData(3e-8)]
    [InlineData(-3e-8)]
    public void A_perpendicular_from_a_point_right_next_to_the_line_can_be_drawn_again(double off)
    {
        MarkedLine? square = null;
        var drawing = CompassDrawing.Of(pencil =>
        {
            var line = pencil.Join(pencil.Mark(0, -14.733333), pencil.Mark(0, 0));
            pencil.SetRadius(900);
            square = pencil.Perpendicular(line, pencil.Mark(off, -5));
        });

        square!.Line.Curve.Segment.Chord.Unit().Y.ShouldBe(0, 1e-9);
        square.Point.Point.X.ShouldBe(0, 1e-9);
        drawing.ShouldRebuild();
    }

    /// <summary>Where circles touch, a turn of a hair's breadth makes no second place and no stretch in common.</summary>
    [Fact]
    public void Circles_that_touch_cross_in_one_place_however_they_lie()
    {
        foreach (var degrees in (double[])[0, 1e-9, 1e-6, 5e-4, 0.01, 45, 180.0000006])
        {
            var turn = Angle.FromDegrees(degrees);
            MarkedPoint? touch = null;
            MarkedPoint? onLine = null;
            CompassDrawing.Of(pencil =>
            {
                var centre = pencil.Mark(0, 0);
                pencil.SetRadius(1);
                var circle = pencil.Circle(centre);
                pencil.SetRadius(2);
                var next = pencil.Circle(pencil.Mark(Point.Origin.Polar(3, turn)));
                touch = pencil.Cross(circle, next);
                var start = Point.Origin.Polar(1, turn);
                var tangent = pencil.Join(
                    pencil.Mark(start),
                    pencil.Mark(start + Vector.Towards(turn).Left * 5)
                );
                onLine = pencil.Cross(circle, tangent);
            });

            touch!.Point.DistanceTo(Point.Origin.Polar(1, turn)).ShouldBeLessThan(1e-8);
            onLine!.Point.DistanceTo(Point.Origin.Polar(1, turn)).ShouldBeLessThan(1e-8);
        }
    }

    [Fact]
    public void Divided_lines_are_stepped_off_evenly()
    {
        Gen.Select(Pairs, Gen.Int[2, 30])
            .Sample(
                (ends, parts) =>
                {
                    var (a, b) = ends;
                    IReadOnlyList<MarkedPoint> marks = [];
                    var drawing = CompassDrawing.Of(pencil =>
                    {
                        var (from, to) = (pencil.Mark(a), pencil.Mark(b));
                        pencil.Join(from, to);
                        marks = pencil.DivideLine(from, to, parts);
                    });

                    marks.Count.ShouldBe(parts - 1);
                    Point[] all = [a, .. marks.Select(mark => mark.Point), b];
                    all.Zip(all[1..], (one, next) => one.DistanceTo(next))
                        .ShouldAllBe(step => Math.Abs(step - a.DistanceTo(b) / parts) < 1e-9);
                    drawing.ShouldRebuild();
                }
            );
    }

    [Fact]
    public void A_line_divided_with_a_rounded_setting_misses_by_all_its_steps()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (a, b) = (pencil.Mark(0, 0), pencil.Mark(100, 0));
            pencil.Join(a, b);
            pencil.DivideLine(a, b, 7);
        });

        // A seventh of 100 is 14.2857; seven steps of 14.3 are 100.1.
        new Replay(drawing.Instructions, setting => Math.Round(setting, 1)).Miss.ShouldBe(
            0.1,
            1e-9
        );
    }

    [Fact]
    public void A_transferred_length_is_as_long_as_before() // Euclid I.3
    {
        MarkedPoint? end = null;
        MarkedPoint? start = null;
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (a, b) = (pencil.Mark(0, 0), pencil.Mark(30, 40));
            start = pencil.Mark(100, 0);
            var line = pencil.Join(start, pencil.Mark(200, 100));
            end = pencil.Transfer(a, b, start, line);
        });

        end!.Point.DistanceTo(start!.Point).ShouldBe(50, 1e-9); // 3-4-5
        drawing.ShouldRebuild();
    }

    [Fact]
    public void A_cut_is_chosen_by_a_point_or_a_side()
    {
        Dictionary<string, MarkedPoint> cuts = [];
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (a, b) = (pencil.Mark(-50, 0), pencil.Mark(50, 0));
            var (middle, top) = (pencil.Mark(0, 0), pencil.Mark(0, 30));
            var line = pencil.Join(a, b);
            pencil.SetRadius(20);
            cuts["nearest B"] = pencil.Cut(middle, line, CrossingChoice.NearestTo(b));
            cuts["farthest B"] = pencil.Cut(middle, line, CrossingChoice.FarthestFrom(b));
            cuts["left"] = pencil.Cut(middle, line, CrossingChoice.LeftOf(middle, top));
            cuts["right"] = pencil.Cut(middle, line, CrossingChoice.RightOf(middle, top));
        });

        cuts["nearest B"].Point.ShouldBe(new(20, 0));
        cuts["farthest B"].Point.ShouldBe(new(-20, 0));
        // A point that was marked before keeps its label.
        cuts["left"].ShouldBeSameAs(cuts["farthest B"]);
        cuts["right"].ShouldBeSameAs(cuts["nearest B"]);
        drawing.ShouldRebuild();
    }

    [Fact]
    public void Two_circles_with_one_radius_cross_in_an_equilateral_triangle() // Euclid I.1
    {
        MarkedPoint? tip = null;
        MarkedPoint? low = null;
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (a, b) = (pencil.Mark(3, 4), pencil.Mark(43, 4));
            pencil.SetRadius(a, b);
            var circles = pencil.Circles([a, b]);
            tip = pencil.Cross(circles[0], circles[1], CrossingChoice.LeftOf(a, b));
            low = pencil.Cross(circles[0], circles[1], CrossingChoice.RightOf(a, b));
        });

        tip!.Point.X.ShouldBe(23, 1e-12);
        tip.Point.Y.ShouldBe(4 + 20 * Math.Sqrt(3), 1e-12);
        low!.Point.Y.ShouldBe(4 - 20 * Math.Sqrt(3), 1e-12);
        drawing.ShouldRebuild();
    }

    [Fact]
    public void An_arc_through_two_points_is_drawn_from_where_arcs_from_both_cross()
    {
        DrawnCurve? arc = null;
        var drawing = CompassDrawing.Of(pencil =>
        {
            pencil.SetRadius(77.274);
            arc = pencil.ArcThrough(pencil.Mark(0, 0), pencil.Mark(40, 0));
        });

        arc!.Curve.Segment.Radius.ShouldBe(77.274, 1e-9);
        arc.Curve.Segment.Bulge.ShouldBeGreaterThan(0);
        arc.Curve.Segment.Sweep.Degrees.ShouldBe(30, 1e-3); // R / (2 sin 15°) for twelve petals
        drawing.ShouldRebuild();
    }

    [Fact]
    public void Arcs_turn_counter_clockwise_even_by_more_than_a_half_circle()
    {
        DrawnCurve? most = null;
        var drawing = CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(0, 0);
            pencil.SetRadius(10);
            most = pencil.Arc(centre, pencil.Mark(0, 10), pencil.Mark(10, 0));
        });

        most!.Curve.Segment.Sweep.Degrees.ShouldBe(270, 1e-9);
        drawing.ShouldRebuild();
    }

    [Fact]
    public void A_line_is_extended_to_the_far_side_of_a_circle_and_to_other_lines()
    {
        Dictionary<string, Point> ends = [];
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (a, b) = (pencil.Mark(0, 0), pencil.Mark(10, 10));
            pencil.SetRadius(30);
            var circle = pencil.Circle(a);
            ends["circle"] = pencil.Extend(b, a, circle).Point.Point;
            var wall = pencil.Join(pencil.Mark(100, -200), pencil.Mark(100, 200));
            ends["line"] = pencil.Extend(a, b, wall).Point.Point;
            var tips = pencil.DivideCircle(circle, 5);
            ends["each"] = pencil.Extend([a], tips.Skip(3).Take(1), wall)[0].Point.Point;
        });

        ends["circle"].X.ShouldBe(-30 / Math.Sqrt(2), 1e-12);
        ends["line"].ShouldBe(new(100, 100));
        ends["each"].Y.ShouldBe(-100 * Math.Tan(54 * Math.PI / 180), 1e-9);
        drawing.ShouldRebuild();
    }

    [Fact]
    public void A_star_is_joined_in_one_step_and_its_inner_corners_marked_in_another()
    {
        IReadOnlyList<MarkedPoint> inner = [];
        var drawing = CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(0, 0);
            pencil.SetRadius(40);
            var tips = pencil.DivideCircle(pencil.Circle(centre, PencilLine.Guide), 5);
            var sides = pencil.JoinRound(tips, every: 2);
            inner = pencil.Cross(sides, [.. sides.Skip(1), sides[0]]);
        });

        drawing.Curves.Count.ShouldBe(5);
        inner.Count.ShouldBe(5);
        // MathWorld, Pentagram: the inner pentagon is smaller by the square of the golden ratio.
        var golden = (1 + Math.Sqrt(5)) / 2;
        inner.ShouldAllBe(corner =>
            Math.Abs(corner.Point.DistanceTo(Point.Origin) - 40 / (golden * golden)) < 1e-9
        );
        drawing.ShouldRebuild();
    }

    private static StepKind[] Kinds(Action<Pencil> draw) =>
        [.. CompassDrawing.Of(draw).Instructions.Select(step => step.Kind)];
}
