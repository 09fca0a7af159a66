namespace PatternGen.Tests.Carving.Plan;

public class HandSpecs
{
    public static TheoryData<string> Names => ["rail", "petals", "wreath", "combined"];

    /// <summary>The plan of the mirrored pattern for the left hand is the mirror image of that for the right hand, cut by cut.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void The_left_hand_carves_the_mirrored_pattern_in_the_mirror(string name)
    {
        var pattern = name switch
        {
            "rail" => Plans.Rail,
            "petals" => Plans.Petals,
            "wreath" => Plans.Wreath,
            _ => Plans.Combined,
        };
        foreach (var technique in Enum.GetValues<Technique>())
        foreach (var inPasses in (bool[])[false, true])
        {
            var right = Ordered(pattern.Plan(Plans.Knife, Plans.Board.GrainAlong(20)));
            var left = Ordered(
                pattern
                    .MirroredLeftRight()
                    .Plan(Plans.Knife, Plans.Board.GrainAlong(-20))
                    .With(Hand.Left)
            );

            left.Strokes.Count.ShouldBe(right.Strokes.Count);
            for (var i = 0; i < left.Strokes.Count; i++)
                ShouldMirror(left.Strokes[i], right.Strokes[i]);
            left.BoardTurns.ShouldBe(right.BoardTurns);
            left.Steps.Select(step => step.Reason)
                .ShouldBe(right.Steps.Select(step => step.Reason));

            CarvingPlan Ordered(CarvingPlan plan) =>
                inPasses ? plan.With(technique).ByPasses() : plan.With(technique).ByChip();
        }
    }

    private static void ShouldMirror(CarvingStroke left, CarvingStroke right)
    {
        var mirror = Transform.MirrorLeftRight();
        left.Chip.Chip.Id.ShouldBe(right.Chip.Chip.Id);
        left.Chip.Number.ShouldBe(right.Chip.Number);
        (left.Kind, left.Side, left.Pressure, left.Reason, left.Grain).ShouldBe(
            (right.Kind, right.Side, right.Pressure, right.Reason, right.Grain)
        );
        left.Start.DistanceTo(mirror.Apply(right.Start)).ShouldBeLessThan(1e-6);
        left.End.DistanceTo(mirror.Apply(right.End)).ShouldBeLessThan(1e-6);
        left.Deepest.DistanceTo(mirror.Apply(right.Deepest)).ShouldBeLessThan(1e-6);
        left.Depth.ShouldBe(right.Depth, 1e-9);
        left.DeepestAlong.ShouldBe(right.DeepestAlong, 1e-6);
        Plans.Between(left.BoardTurn.Degrees, -right.BoardTurn.Degrees).ShouldBe(0, 1e-6);
    }
}
