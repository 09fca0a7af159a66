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
