using System.Globalization;

namespace PatternGen.Tests.Compass;

public class CompassDrawingSpecs
{
    [Fact]
    public void Six_petals_take_six_steps()
    {
        var drawing = SixPetals();

        drawing
            .Instructions.Select(step => step.Kind)
            .ShouldBe([
                StepKind.Mark,
                StepKind.SetRadius,
                StepKind.Circle,
                StepKind.MarkOnCircle,
                StepKind.Walk,
                StepKind.Arc,
            ]);
        drawing.Instructions.Select(step => step.Number).ShouldBe([1, 2, 3, 4, 5, 6]);
        drawing.Curves.Count.ShouldBe(7);
        drawing.Guides.ShouldBeEmpty();
        drawing.Extents.Width.ShouldBe(80, 1e-9);
        // Euclid IV.15: each arc goes through the centre, a radius from its needle.
        drawing
            .Curves.Skip(1)
            .ShouldAllBe(arc => arc.Segment.Middle.DistanceTo(Point.Origin) < 1e-9);
        drawing.ShouldRebuild();
    }

    [Fact]
    public void Twelve_petals_take_a_dozen_steps_with_the_needle_outside_the_rim()
    {
        // Neighbours tangent at the centre: arc radius R / (2 sin 15°), compass points outside the rim (computed).
        var drawing = TwelvePetals();

        drawing.Instructions.Count.ShouldBeLessThanOrEqualTo(12);
        drawing.Curves.Count.ShouldBe(1 + 24);
        drawing.Curves.Skip(1).ShouldAllBe(arc => Math.Abs(arc.Segment.Sweep.Degrees - 30) < 1e-9);
        drawing.Instructions[^1].OutsideOf.ShouldBeSameAs(drawing.Instructions[2].Drawn[0]);
        drawing.Instructions[^1].Needles.Distinct().Count().ShouldBe(12);
        drawing.ShouldRebuild();
    }

    [Fact]
    public void Lines_drawn_twice_are_there_once_whichever_way_they_run()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (a, b) = (pencil.Mark(0, 0), pencil.Mark(30, 0));
            pencil.SetRadius(30);
            pencil.Circle(a, PencilLine.Guide);
            pencil.Circle(a);
            pencil.Circle(a);
            pencil.Join(a, b);
            pencil.Join(b, a);
            pencil.Circle(b, PencilLine.Guide);
        });

        drawing.Curves.Count.ShouldBe(2);
        // A guide line that was drawn over is none.
        drawing.Guides.Count.ShouldBe(1);
        drawing.Guides[0].Circle.Centre.ShouldBe(new(30, 0));
    }

    [Fact]
    public void An_arc_and_the_rest_of_its_circle_are_two_lines()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (centre, right, top) = (pencil.Mark(0, 0), pencil.Mark(9, 0), pencil.Mark(0, 9));
            pencil.SetRadius(9);
            pencil.Arc(centre, right, top);
            pencil.Arc(centre, top, right);
        });

        drawing.Curves.Count.ShouldBe(2);
        drawing.Curves.Sum(arc => arc.Length).ShouldBe(18 * Math.PI, 1e-9);
    }

    [Fact]
    public void A_drawing_without_a_line_of_its_own_is_refused()
    {
        Should.Throw<ArgumentException>(() => CompassDrawing.Of(_ => { }));
        Should.Throw<ArgumentException>(() =>
            CompassDrawing.Of(pencil =>
            {
                pencil.SetRadius(3);
                pencil.Circle(pencil.Mark(0, 0), PencilLine.Guide);
            })
        );
        Should.Throw<ArgumentNullException>(() => CompassDrawing.Of(null!));
    }

    [Fact]
    public void A_pencil_draws_only_inside_its_lambda()
    {
        Pencil? kept = null;
        MarkedPoint? centre = null;
        DrawnCurve? circle = null;
        CompassDrawing.Of(pencil =>
        {
            kept = pencil;
            centre = pencil.Mark(0, 0);
            pencil.SetRadius(5);
            circle = pencil.Circle(centre);
        });

        foreach (
            var act in (Action[])
                [
                    () => kept!.Mark(1, 1),
                    () => kept!.SetRadius(4),
                    () => kept!.Circle(centre!),
                    () => kept!.DivideCircle(circle!, 6),
                    () => kept!.WorkWithin(circle!),
                ]
        )
            Should.Throw<InvalidOperationException>(act).Message.ShouldContain("lambda");
    }

    [Fact]
    public void Nor_after_the_lambda_has_failed()
    {
        Pencil? kept = null;
        Should.Throw<TimeoutException>(() =>
            CompassDrawing.Of(pencil =>
            {
                kept = pencil;
                throw new TimeoutException();
            })
        );

        Should.Throw<InvalidOperationException>(() => kept!.Mark(0, 0));
    }

    [Fact]
    public void Points_and_curves_of_another_drawing_are_refused()
    {
        MarkedPoint? strange = null;
        DrawnCurve? strangeCircle = null;
        CompassDrawing.Of(pencil =>
        {
            strange = pencil.Mark(0, 0);
            pencil.SetRadius(5);
            strangeCircle = pencil.Circle(strange);
        });

        Refused<ArgumentException>(pencil => pencil.Circle(strange!))
            .ShouldContain("another drawing");
        Refused<ArgumentException>(pencil => pencil.Walk(strangeCircle!, pencil.Mark(5, 0), 6))
            .ShouldContain("another drawing");
        Refused<ArgumentException>(pencil => pencil.Join(pencil.Mark(1, 2), strange!));
    }

    [Fact]
    public void Misuse_is_told_at_once()
    {
        Refused<ArgumentOutOfRangeException>(pencil => pencil.SetRadius(0));
        Refused<ArgumentOutOfRangeException>(pencil => pencil.SetRadius(double.NaN));
        Refused<ArgumentOutOfRangeException>(pencil => pencil.Mark(double.PositiveInfinity, 0));
        Refused<ArgumentNullException>(pencil => pencil.Circle(null!));
        Refused<ArgumentException>(pencil => pencil.Circles([]));
        Refused<ArgumentException>(pencil => pencil.Join(pencil.Mark(1, 1), pencil.Mark(1, 1)))
            .ShouldContain("different points");
        Refused<ArgumentException>(pencil =>
            pencil.Arcs(
                [pencil.Mark(0, 0)],
                [pencil.Mark(9, 0), pencil.Mark(0, 9)],
                [pencil.Mark(-9, 0)]
            )
        );
        Refused<ArgumentException>(pencil =>
                pencil.Walk(pencil.Circle(pencil.Mark(0, 0)), pencil.Mark(1, 0), 6)
            )
            .ShouldContain("does not lie on the circle");
        foreach (var count in (int[])[-1, 0, 1, 361])
            Refused<ArgumentOutOfRangeException>(pencil =>
                pencil.DivideCircle(pencil.Circle(pencil.Mark(0, 0)), count)
            );
        Should.Throw<InvalidOperationException>(() =>
            CompassDrawing.Of(pencil => pencil.Circle(pencil.Mark(0, 0)))
        );
    }

    [Fact]
    public void A_walk_with_a_setting_wider_than_the_circle_is_impossible()
    {
        var error = Should.Throw<PatternException>(() =>
            CompassDrawing.Of(pencil =>
            {
                pencil.SetRadius(10);
                var circle = pencil.Circle(pencil.Mark(0, 0));
                pencil.SetRadius(20.5);
                pencil.Walk(circle, pencil.Mark(10, 0), 3);
            })
        );

        error.Message.ShouldContain("20.5");
        error.Place.ShouldBe(new Point(10, 0));
        error.Remedies.ShouldContain(remedy => remedy.Contains("10 mm"));
    }

    [Fact]
    public void What_does_not_meet_says_what_setting_would()
    {
        var cut = Should.Throw<PatternException>(() =>
            CompassDrawing.Of(pencil =>
            {
                var line = pencil.Join(pencil.Mark(30, 0), pencil.Mark(0, 40));
                pencil.SetRadius(20);
                pencil.Cut(pencil.Mark(0, 0), line);
            })
        );
        // 3-4-5: the line lies 24 to 40 mm away.
        cut.Remedies.ShouldContain("a setting between 24 and 40 mm");

        var arc = Should.Throw<PatternException>(() =>
            CompassDrawing.Of(pencil =>
            {
                pencil.SetRadius(4);
                pencil.Arc(pencil.Mark(0, 0), pencil.Mark(3, 4), pencil.Mark(-3, 4));
            })
        );
        arc.Remedies.ShouldContain("a setting of 5 mm");

        var arcs = Should.Throw<PatternException>(() =>
            CompassDrawing.Of(pencil =>
            {
                pencil.SetRadius(2.4);
                pencil.ArcThrough(pencil.Mark(0, 0), pencil.Mark(3, 4));
            })
        );
        arcs.Remedies.ShouldContain("a setting of more than 2.5 mm");

        var square = Should.Throw<PatternException>(() =>
            CompassDrawing.Of(pencil =>
            {
                var line = pencil.Join(pencil.Mark(0, 0), pencil.Mark(9, 0));
                pencil.SetRadius(2.4);
                pencil.Perpendicular(line, pencil.Mark(3, 4));
            })
        );
        square.Remedies.ShouldContain("a setting of more than 4 mm");
    }

    [Fact]
    public void Curves_that_do_not_cross_or_cross_unclearly_are_told()
    {
        Should
            .Throw<PatternException>(() =>
                CompassDrawing.Of(pencil =>
                {
                    pencil.SetRadius(3);
                    var circles = pencil.Circles([pencil.Mark(0, 0), pencil.Mark(9, 0)]);
                    pencil.Cross(circles[0], circles[1]);
                })
            )
            .Message.ShouldContain("do not cross");
        foreach (var side in (double[])[-4, 4])
            Should
                .Throw<PatternException>(() =>
                    CompassDrawing.Of(pencil =>
                    {
                        pencil.SetRadius(3);
                        var circles = pencil.Circles([pencil.Mark(0, 0), pencil.Mark(4, 0)]);
                        var way = CrossingChoice.LeftOf(
                            pencil.Mark(-9, side),
                            pencil.Mark(9, side)
                        );
                        pencil.Cross(circles[0], circles[1], way);
                    })
                )
                .Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void Curves_that_run_along_each_other_do_not_cross()
    {
        foreach (
            var act in (Action<Pencil, MarkedPoint, MarkedPoint, DrawnCurve, DrawnCurve>[])
                [
                    (pencil, _, _, circle, _) => pencil.Cross(circle, circle),
                    (pencil, _, _, _, line) => pencil.Cross(line, line),
                    (pencil, a, _, circle, _) => pencil.Cut(a, circle),
                    (pencil, a, b, _, line) => pencil.Extend(a, b, line),
                ]
        )
            Should
                .Throw<PatternException>(() =>
                    CompassDrawing.Of(pencil =>
                    {
                        var (a, b) = (pencil.Mark(0, 0), pencil.Mark(20, 10));
                        pencil.SetRadius(9);
                        act(pencil, a, b, pencil.Circle(a), pencil.Join(a, b));
                    })
                )
                .Message.ShouldContain("along each other");
    }

    [Fact]
    public void Single_points_are_lettered_and_go_on_after_z()
    {
        List<string> labels = [];
        CompassDrawing.Of(pencil =>
        {
            for (var i = 0; i < 28; i++)
                labels.Add(pencil.Mark(i, i * i).Label);
            pencil.SetRadius(1);
            pencil.Circle(pencil.Mark(0, 0));
        });

        labels[..3].ShouldBe(["A", "B", "C"]);
        labels[^3..].ShouldBe(["Z", "AA", "AB"]);
    }

    [Fact]
    public void A_second_round_goes_on_counting()
    {
        IReadOnlyList<MarkedPoint> second = [];
        CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(0, 0);
            pencil.SetRadius(40);
            pencil.DivideCircle(pencil.Circle(centre), 6);
            pencil.SetRadius(20);
            second = pencil.DivideCircle(pencil.Circle(centre), 6);
        });

        second.Select(point => point.Label).ShouldBe(["7", "8", "9", "10", "11", "12"]);
    }

    [Fact]
    public void Marks_of_petals_and_ground_go_with_the_drawing()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            pencil.SetRadius(9);
            pencil.Circle(pencil.Mark(0, 0));
            pencil.MarkPetal(new(1, 2));
            pencil.MarkPlain(new(3, 4));
        });

        drawing.PetalMarks.ShouldBe([new Point(1, 2)]);
        drawing.PlainMarks.ShouldBe([new Point(3, 4)]);
    }

    [Fact]
    public void A_drawing_far_from_the_origin_is_as_fine_as_one_at_it()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(100_000, -200_000);
            pencil.SetRadius(4);
            var circle = pencil.Circle(centre);
            pencil.JoinRound(pencil.DivideCircle(circle, 10));
            // A thousandth apart are two points, and two circles.
            pencil.Circle(pencil.Mark(100_000.001, -200_000));
        });

        drawing.Curves.Count.ShouldBe(12);
        drawing.ShouldRebuild();
    }

    [Fact]
    public void The_same_lambda_draws_the_same_in_any_culture()
    {
        var one = Told(TwelvePetals());
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("ar-EG");
            Told(TwelvePetals()).ShouldBe(one);
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Told(TwelvePetals()).ShouldBe(one);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
        TwelvePetals().Curves.ShouldBe(TwelvePetals().Curves);

        static string[] Told(CompassDrawing drawing) =>
            [
                .. drawing.Instructions.Select(step => step.Sentence()),
                .. drawing.Instructions.SelectMany(step => step.Marked).Select(mark => $"{mark}"),
            ];
    }

    private static string Refused<T>(Action<Pencil> draw)
        where T : Exception =>
        Should
            .Throw<T>(() =>
                CompassDrawing.Of(pencil =>
                {
                    pencil.SetRadius(9);
                    draw(pencil);
                })
            )
            .Message;

    private static CompassDrawing SixPetals() =>
        CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(0, 0);
            pencil.SetRadius(40);
            var tips = pencil.DivideCircle(pencil.Circle(centre), 6);
            pencil.Arcs(tips, [.. tips.Skip(1), tips[0]], [tips[^1], .. tips.SkipLast(1)]);
        });

    private static CompassDrawing TwelvePetals() =>
        CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(0, 0);
            pencil.SetRadius(40);
            var rim = pencil.Circle(centre);
            pencil.WorkWithin(rim);
            var tips = pencil.DivideCircle(rim, 12);
            pencil.SetRadius(20 / Math.Sin(Math.PI / 12));
            pencil.ArcsThrough([centre], tips);
            pencil.ArcsThrough(tips, [centre]);
        });
}
