using PatternGen.Tests.Compass;

namespace PatternGen.Tests.Motifs;

public class RosetteStepSpecs
{
    [Fact]
    public void Every_family_of_3_to_36_parts_can_be_drawn_again_from_its_steps_alone()
    {
        for (var count = 3; count <= 36; count++)
            foreach (var (_, rosette, _) in RosetteFamilies.Of(count))
                rosette.ShouldRebuild();
    }

    /// <summary>A person cannot mark points side by side on a disc of 1.5 mm.</summary>
    [Fact]
    public void No_point_is_marked_on_a_plain_centre_of_the_default_size()
    {
        foreach (var (name, rosette, _) in RosetteFamilies.Of(12))
            if (rosette.Family != RosetteFamily.Fan)
                rosette
                    .Instructions.SelectMany(step => step.Marked)
                    .ShouldAllBe(
                        mark => Math.Abs(mark.Point.DistanceTo(Point.Origin) - 0.75) > 1e-6,
                        name
                    );
    }

    [Fact]
    public void Twelve_petals_are_twelve_arcs_told_in_one_sentence_and_gone_over_in_another()
    {
        var steps = Rosette.Petals(12, 40).Instructions;

        steps.Count.ShouldBe(13);
        steps[^2].Drawn.Count.ShouldBe(12);
        steps[^2].Through!.Label.ShouldBe("A");
        steps[^2]
            .Sentence()
            .ShouldStartWith(
                "With the point on each of 13 to 24 in turn, draw a faint arc through A, from one of 1 to 12 to another;"
            );
        steps[^1]
            .Sentence()
            .ShouldBe(
                "Starting at each of 1 to 12, go over the faint arcs as far as the 0.75 mm circle about A."
            );
    }

    /// <summary>With the needles 46.1 mm from the centre, a circle meets one of seven tips only.</summary>
    [Fact]
    public void An_odd_round_is_told_from_the_centre_to_the_tips_that_the_pencil_meets() =>
        Rosette
            .Petals(7, 40)
            .Instructions[^1]
            .Sentence()
            .ShouldStartWith(
                "With the point on each of 8 to 21 in turn, draw an arc from A to whichever of 1 to 7 it meets;"
            );

    [Fact]
    public void Stopped_petals_are_gone_over_as_far_as_the_first_ones() =>
        Rosette
            .Overlaid(2, 6, 40, PetalCrossing.Stopped)
            .Instructions.TakeLast(3)
            .Select(step => step.Sentence())
            .ShouldBe([
                "With the point on each of 1 to 12 in turn, draw a faint arc through A, from one of 1 to 12 to another.",
                "Starting at each of 1, 3 and so on to 11, go over the faint arcs as far as the 0.75 mm circle about A.",
                "Starting at each of 2, 4 and so on to 12, go over the faint arcs as far as they first meet the strong arcs about 1, 3 and so on to 11.",
            ]);

    [Fact]
    public void All_arcs_of_a_round_are_one_step()
    {
        var petals = Rosette.Petals(12, 40, centre: 0);

        petals.Instructions.Count.ShouldBeLessThanOrEqualTo(10);
        petals.Instructions.Count(step => step.Kind == StepKind.Arc).ShouldBe(1);
    }

    /// <summary>R / (2 sin(180°/n)) is more than R from 7 on.</summary>
    [Fact]
    public void For_more_than_six_petals_the_steps_say_that_the_needle_stands_outside_the_rim()
    {
        for (var count = 3; count <= 36; count++)
            Rosette
                .Petals(count, 40)
                .Instructions.Last(step => step.Kind == StepKind.Arc)
                .OutsideOf.ShouldBe(
                    count > 6 ? RimOf(Rosette.Petals(count, 40)) : null,
                    SameCircle
                );
    }

    [Fact]
    public void Six_petals_are_a_walk_round_the_rim_with_one_setting()
    {
        var steps = Rosette.Petals(6, 40).Instructions;

        steps
            .Select(step => step.Kind)
            .ShouldBe([
                StepKind.Mark,
                StepKind.SetRadius,
                StepKind.Circle,
                StepKind.MarkOnCircle,
                StepKind.Walk,
                StepKind.Arc,
            ]);
    }

    [Fact]
    public void The_first_point_is_at_the_top()
    {
        foreach (var (name, rosette, _) in RosetteFamilies.Of(7))
            if (rosette.Family is not (RosetteFamily.Fan or RosetteFamily.WithinPolygon))
                rosette
                    .Instructions.First(step => step.Kind == StepKind.MarkOnCircle)
                    .Direction!.Value.Degrees.ShouldBe(90, 1e-9, name);
    }

    private static DrawnCurve RimOf(Rosette rosette) =>
        rosette.Instructions.First(step => step.Kind == StepKind.Circle).Drawn[0];

    private static readonly IEqualityComparer<DrawnCurve?> SameCircle =
        EqualityComparer<DrawnCurve?>.Create((a, b) => a?.Curve == b?.Curve);
}
