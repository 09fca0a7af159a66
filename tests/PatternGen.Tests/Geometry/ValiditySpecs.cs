namespace PatternGen.Tests.Geometry;

public class ValiditySpecs
{
    [Fact]
    public void A_ring_that_crosses_itself_says_where()
    {
        var bow = Contour.Polygon(new(0, 0), new(4, 4), new(4, 0), new(0, 4));

        bow.CrossesItself().ShouldBeTrue();
        var flaw = bow.Validate().Flaws.Single(flaw => flaw.Kind == FlawKind.SelfCrossing);
        flaw.Place.ShouldBe(new(2, 2));
        flaw.Segment.ShouldBe(0);
        bow.Validate().ToString().ShouldContain("(2, 2)");
    }

    [Fact]
    public void Arcs_that_cross_are_found_from_every_start_and_direction() =>
        EveryWay.Check(
            // Two half circles that cross: the upper one hangs down, the lower one stands up.
            new(new(0, 0, -1), new(4, 0), new(4, 1, -1), new(0, 1)),
            (contour, scale) => contour.CrossesItself().ShouldBe(true)
        );

    [Fact]
    public void A_ring_that_touches_itself_says_where()
    {
        var pinched = Contour.Polygon(
            new(0, 0),
            new(2, 1),
            new(4, 0),
            new(4, 4),
            new(2, 1),
            new(0, 4)
        );

        pinched.CrossesItself().ShouldBeFalse();
        var flaw = pinched.Validate().Flaws.ShouldHaveSingleItem();
        flaw.Kind.ShouldBe(FlawKind.SelfTouching);
        flaw.Place.ShouldBe(new(2, 1));
    }

    [Fact]
    public void A_ring_that_passes_through_its_own_corner_crosses_itself()
    {
        // Through (2, 2) twice, at a corner each time, from one side to the other.
        var ring = Contour.Polygon(
            new(0, 0),
            new(2, 2),
            new(4, 4),
            new(4, 0),
            new(2, 2),
            new(0, 6)
        );

        ring.Validate().Flaws.ShouldHaveSingleItem().Kind.ShouldBe(FlawKind.SelfCrossing);
    }

    [Fact]
    public void A_spike_is_found()
    {
        var spiked = Contour.Polygon(
            new(0, 0),
            new(4, 0),
            new(4, 4),
            new(4, 9),
            new(4, 4),
            new(0, 4)
        );

        spiked.Validate().Flaws.ShouldContain(flaw => flaw.Kind == FlawKind.Spike);
    }

    [Fact]
    public void A_doubled_corner_is_found()
    {
        var doubled = Contour.Polygon(new(0, 0), new(4, 0), new(4, 0), new(4, 4));

        var flaw = doubled.Validate().Flaws.ShouldHaveSingleItem();
        flaw.Kind.ShouldBe(FlawKind.DoubledCorner);
        flaw.Segment.ShouldBe(1);
        flaw.Place.ShouldBe(new(4, 0));
    }

    [Fact]
    public void A_ring_without_area_is_found()
    {
        var there = new Contour(new Vertex(0, 0), new Vertex(4, 0));
        var arcs = new Contour(new(0, 0, 0.4), new(4, 0, -0.4));

        there.Validate().Flaws.ShouldContain(flaw => flaw.Kind == FlawKind.NoArea);
        arcs.Validate().Flaws.ShouldContain(flaw => flaw.Kind == FlawKind.NoArea);
    }

    [Fact]
    public void Parts_that_run_along_each_other_are_found()
    {
        // A frame cut open along one line.
        var keyhole = Contour.Polygon(
            new(0, 0),
            new(9, 0),
            new(9, 9),
            new(0, 9),
            new(0, 5),
            new(3, 5),
            new(3, 6),
            new(6, 6),
            new(6, 3),
            new(3, 3),
            new(3, 5),
            new(0, 5)
        );

        keyhole.Validate().Flaws.ShouldContain(flaw => flaw.Kind == FlawKind.SelfOverlapping);
    }

    [Fact]
    public void A_ring_with_tangent_arcs_at_every_joint_is_sound()
    {
        var wave = new Contour(
            new(0, 0, 1),
            new(2, 0, -1),
            new(4, 0, 1),
            new(6, 0),
            new(6, 5),
            new(0, 5)
        );

        EveryWay.Check(wave, (contour, _) => contour.Validate().ToString().ShouldBe("valid"));
    }

    /// <summary>Comparing each with each, 20 thousand million times, would take the better part of an hour.</summary>
    [Fact]
    public Task A_large_ring_is_checked_in_little_time() =>
        Patience.WithinMinutes(() =>
            Shapes.Regular(200_000, 100).Validate().IsValid.ShouldBeTrue()
        );
}
