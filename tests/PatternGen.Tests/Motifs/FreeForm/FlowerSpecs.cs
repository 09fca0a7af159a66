namespace PatternGen.Tests.Motifs.FreeForm;

public class FlowerSpecs
{
    public static TheoryData<Flower> Flowers =>
        [
            Flower.Of(3, 20),
            Flower.Of(6, 20),
            Flower.Of(8, 20).WithCarvedCentre(),
            Flower.Of(12, 24).WithRidge(0.5),
            Flower.Of(5, 20).Overlapping(),
            Flower.Of(8, 20).Overlapping().WithCarvedCentre(3),
            Flower.Of(7, 20).Overlapping().WithRidge(0),
            Flower.Of(5, 20).WithCentre(0),
            Flower.Of(6, 20).WithCentre(0).WithRidge(0),
            Flower.Of(8, 20).WithRidge(0),
            Flower.Of(24, 25).Overlapping().WithPetalWidth(20),
            Flower.Of(3, 20).Overlapping().WithPetalWidth(23),
        ];

    [Theory]
    [MemberData(nameof(Flowers), DisableDiscoveryEnumeration = true)]
    public void Petals_share_one_shape_and_do_not_overlap(Flower flower)
    {
        FreeFormChecks.ShouldNotOverlap(flower);
        flower
            .Chips.Where(chip => chip.Id.Row == 1)
            .Select(chip => chip.Shape)
            .Distinct(ReferenceEqualityComparer.Instance)
            .ShouldHaveSingleItem();
        flower.Chips.Count(chip => chip.Id.Row == 1).ShouldBe(flower.Petals);
    }

    [Theory]
    [MemberData(nameof(Flowers), DisableDiscoveryEnumeration = true)]
    public void Neighbours_keep_the_ridge_between_them(Flower flower)
    {
        Chip[] petals = [.. flower.Chips.Where(chip => chip.Id.Row == 1)];

        for (var i = 0; i < petals.Length; i++)
            FreeFormChecks
                .Distance(petals[i], petals[(i + 1) % petals.Length])
                .ShouldBeGreaterThanOrEqualTo(flower.Ridge - 1e-6);
        if (flower.IsCentreCarved)
            petals.ShouldAllBe(petal =>
                FreeFormChecks.Distance(petal, flower.Chips.Last()) > flower.Ridge - 1e-6
            );
    }

    [Theory]
    [MemberData(nameof(Flowers), DisableDiscoveryEnumeration = true)]
    public void A_flower_reaches_as_far_as_its_radius_and_turns_into_itself(Flower flower)
    {
        var farthest = flower.Chips.Max(chip =>
            chip.Outline.Segments.Max(side =>
                Enumerable
                    .Range(0, 101)
                    .Max(i => side.PointAt(side.Length * i / 100).DistanceTo(Point.Origin))
            )
        );
        farthest.ShouldBe(flower.Radius, 0.01);
        var turned = flower.Turned(360.0 / flower.Petals).Chips.ToArray();
        foreach (var chip in flower.Chips)
            turned
                .Min(other => other.Outline.Extents.Centre.DistanceTo(chip.Outline.Extents.Centre))
                .ShouldBe(0, 1e-9);
    }

    [Fact]
    public void Petals_that_do_not_fit_are_refused_and_the_width_offered_works()
    {
        var refusal = Should.Throw<PatternException>(() =>
            Flower.Of(12, 20).WithPetalWidth(9).Chips.Count()
        );

        var width = FreeFormChecks.NumberIn(refusal.Remedies[0]);
        Flower.Of(12, 20).WithPetalWidth(width).ChipCount.ShouldBe(12);
    }

    [Fact]
    public void Petals_without_a_ridge_still_keep_to_their_own_sector()
    {
        var flower = Flower.Of(7, 25).WithRidge(0);

        // At 14 mm each would reach over the line half-way to its neighbour.
        var refusal = Should.Throw<PatternException>(() => flower.WithPetalWidth(14).ChipCount);
        FreeFormChecks.ShouldNotOverlap(
            flower.WithPetalWidth(FreeFormChecks.NumberIn(refusal.Remedies[0]))
        );
    }

    [Fact]
    public void Overlapping_petals_too_wide_are_refused_and_the_width_offered_works()
    {
        var flower = Flower.Of(3, 20).Overlapping();

        var refusal = Should.Throw<PatternException>(() => flower.WithPetalWidth(30).ChipCount);
        FreeFormChecks.ShouldNotOverlap(
            flower.WithPetalWidth(FreeFormChecks.NumberIn(refusal.Remedies[0]))
        );
    }

    [Fact]
    public void Numbers_that_make_no_flower_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Flower.Of(2, 20));
        Should.Throw<ArgumentOutOfRangeException>(() => Flower.Of(25, 20));
        Should.Throw<ArgumentOutOfRangeException>(() => Flower.Of(6, double.PositiveInfinity));
        Should.Throw<ArgumentOutOfRangeException>(() => Flower.Of(6, 20).WithCentre(13));
        Should.Throw<PatternException>(() =>
            Flower.Of(6, 5).WithCentre(3).WithRidge(2).Chips.Count()
        );
    }
}
