namespace PatternGen.Tests.Compass;

public class GoOverSpecs
{
    [Fact]
    public void A_faint_line_is_gone_over_as_far_as_the_first_circle()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (centre, _, inner) = Circles(pencil);
            var end = pencil.Mark(30, 0);
            pencil.GoOver(pencil.Join(centre, end, PencilLine.Guide), end, inner);
        });

        var line = drawing.Curves.Single(curve => !curve.IsCircle).Segment;
        line.Start.ShouldBe(new Point(10, 0));
        line.End.ShouldBe(new Point(30, 0));
        drawing.Guides.Single().Segment.Length.ShouldBe(30, 1e-12);
        drawing.Instructions[^1].Marked.ShouldBeEmpty();
        drawing.ShouldRebuild();
    }

    /// <summary>An arc of 40 mm round a point of a circle of 40 mm leaves the circle at 60° to each side: Euclid IV.15.</summary>
    [Fact]
    public void A_faint_arc_is_gone_over_from_both_ends()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (_, rim, inner) = Circles(pencil);
            pencil.SetRadius(40);
            var tips = pencil.DivideCircle(rim, 6);
            var arc = pencil.Arc(tips[0], tips[1], tips[5], PencilLine.Guide);
            pencil.GoOver([arc, arc], [tips[1], tips[5]], [inner]);
        });

        var parts = drawing.Curves.Where(curve => !curve.IsCircle).Select(curve => curve.Segment);
        foreach (var part in parts)
        {
            part.Radius.ShouldBe(40, 1e-9);
            // Over a chord of 10 mm the arc turns 2 asin(1/8) from the centre, of the 60° that it has to either tip.
            part.Sweep.Degrees.ShouldBe(60 - 2 * Math.Asin(1 / 8.0) * 180 / Math.PI, 1e-9);
        }
        parts.Count().ShouldBe(2);
        drawing.ShouldRebuild();
    }

    [Fact]
    public void It_stops_at_the_first_of_several_curves_and_says_so()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var (centre, rim, inner) = Circles(pencil);
            var end = pencil.MarkOn(rim, Angle.FromDegrees(0));
            var line = pencil.Join(centre, end, PencilLine.Guide);
            // The line begins on the rim, which does not count.
            pencil.GoOver([line], [end], [rim, inner]);
        });

        drawing.Curves.Single(curve => !curve.IsCircle).Length.ShouldBe(30, 1e-9);
        drawing
            .Instructions[^1]
            .Sentence()
            .ShouldBe(
                "Starting at 1, go over the faint line as far as it first meets the 40 mm circle about A or the 10 mm circle about A."
            );
        drawing.ShouldRebuild();
    }

    [Fact]
    public void A_curve_that_meets_no_limit_is_refused_with_remedies()
    {
        var error = Should.Throw<PatternException>(() =>
            CompassDrawing.Of(pencil =>
            {
                var (_, _, inner) = Circles(pencil);
                var (from, to) = (pencil.Mark(20, 0), pencil.Mark(30, 0));
                pencil.GoOver(pencil.Join(from, to, PencilLine.Guide), from, inner);
            })
        );

        error.Message.ShouldContain("meets none");
        error.Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void What_is_not_faint_or_has_no_such_end_or_is_of_another_drawing_is_refused()
    {
        DrawnCurve? foreign = null;
        CompassDrawing.Of(pencil => foreign = Circles(pencil).Rim);
        CompassDrawing.Of(pencil =>
        {
            var (centre, rim, _) = Circles(pencil);
            var (end, other) = (pencil.Mark(30, 0), pencil.Mark(0, 30));
            var faint = pencil.Join(centre, end, PencilLine.Guide);
            var strong = pencil.Join(centre, other);
            Refused(() => pencil.GoOver(strong, other, rim));
            Refused(() => pencil.GoOver(faint, other, rim));
            Refused(() => pencil.GoOver(pencil.Circle(end, PencilLine.Guide), end, rim));
            Refused(() => pencil.GoOver(foreign!, end, rim));
            Refused(() => pencil.GoOver(faint, end, foreign!));
            Refused(() => pencil.GoOver(faint, end));
        });

        static void Refused(Func<DrawnCurve> goOver) => Should.Throw<ArgumentException>(goOver);
    }

    private static (MarkedPoint Centre, DrawnCurve Rim, DrawnCurve Inner) Circles(Pencil pencil)
    {
        var centre = pencil.Mark(0, 0);
        pencil.SetRadius(40);
        var rim = pencil.Circle(centre);
        pencil.SetRadius(10);
        return (centre, rim, pencil.Circle(centre));
    }
}
