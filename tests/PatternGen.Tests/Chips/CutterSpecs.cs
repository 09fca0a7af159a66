namespace PatternGen.Tests.Chips;

public class CutterSpecs
{
    /// <summary>Trigonometric tables; recomputed in 40-digit arithmetic.</summary>
    private const double Tan65 = 2.14450692050956;

    [Fact]
    public void A_knife_is_held_at_65_degrees_unless_I_say_otherwise()
    {
        // Common practice, no source.
        Knife.Held().HeldAt.Degrees.ShouldBe(65, 1e-12);
        Knife.Held().DepthFor(1).ShouldBe(Tan65, 1e-13);
        Knife.Held().SmallestCurve.ShouldBe(4);
    }

    [Fact]
    public void A_two_sided_chip_3_7_mm_wide_is_4_mm_deep()
    {
        // Common practice: comfortable depth 4 mm, "at 65 degrees a two-sided chip 3.7 mm wide".
        var depth = Knife.Held(degrees: 65).DepthFor(3.7 / 2);

        depth.ShouldBe(1.85 * Tan65, 1e-12);
        Math.Round(depth, 1).ShouldBe(4.0);
    }

    [Theory]
    // 3-4-5 triangle, inradius 1; square of side 6; rectangle 10 by 4; the largest circle in a lens, radius 2 (Codeforces
    // Gym 102215 L): depth = clearance × tan 65°.
    [InlineData(1, 2.14450692050956)]
    [InlineData(3, 6.43352076152868)]
    [InlineData(2, 4.28901384101912)]
    public void Depths_are_those_of_published_inradii(double clearance, double depth) =>
        Knife.Held(65).DepthFor(clearance).ShouldBe(depth, 1e-12);

    [Fact]
    public void A_knife_that_goes_no_deeper_leans_over_for_wide_chips()
    {
        var knife = Knife.Held(65).NoDeeperThan(4);

        // Narrow enough: 1.85 × tan 65° is under 4.
        knife.WallAngleFor(1.85).Degrees.ShouldBe(65, 1e-12);
        // The 3-4-5 triangle: a slope of 4 in 3 is the angle of its larger acute corner, 53.13 degrees.
        knife.WallAngleFor(3).Degrees.ShouldBe(53.13010235415598, 1e-9);
        knife.DepthFor(3).ShouldBe(4, 1e-12);
        // Never under 40 degrees: 4 / tan 40° = 4.767 is the widest that stays at 4.
        knife.WallAngleFor(4.7).Degrees.ShouldBeGreaterThan(40);
        knife.WallAngleFor(4.8).Degrees.ShouldBe(40, 1e-12);
        knife.DepthFor(6).ShouldBe(5.0345977870638, 1e-9); // tan 40° = 0.8390996311772800
    }

    [Fact]
    public void A_knife_that_goes_no_deeper_is_never_a_last_digit_deeper()
    {
        var knife = Knife.Held(80).NoDeeperThan(4);
        for (var clearance = 0.71; clearance < 4.76; clearance += 0.0137)
            knife.DepthFor(clearance).ShouldBeInRange(4 - 1e-12, 4);
    }

    [Fact]
    public void A_knife_held_flatter_than_40_degrees_stays_as_it_is_held() =>
        Knife.Held(30).NoDeeperThan(1).WallAngleFor(10).Degrees.ShouldBe(30, 1e-12);

    [Fact]
    public void Each_setting_of_a_knife_keeps_the_others()
    {
        var knife = Knife
            .Held(Angle.FromDegrees(60))
            .NoDeeperThan(4)
            .WithReach(12)
            .WithSmallestCurve(2.5)
            .NoDeeperThan(3);

        knife.HeldAt.Degrees.ShouldBe(60, 1e-12);
        knife.Reach.ShouldBe(12);
        knife.SmallestCurve.ShouldBe(2.5);
        knife.DeepestWanted.ShouldBe(3);
    }

    [Fact]
    public void A_bit_of_60_degrees_included_makes_walls_of_60()
    {
        var bit = VBit.Of(includedDegrees: 60, diameter: 12);

        bit.WallAngle.Degrees.ShouldBe(60, 1e-12);
        // An equilateral triangle: as deep as its height over half its side, 6 √3.
        bit.Reach.ShouldBe(6 * Math.Sqrt(3), 1e-12);
        bit.DepthFor(1).ShouldBe(Math.Sqrt(3), 1e-12);
        bit.DepthFor(4).ShouldBe(4 * Math.Sqrt(3), 1e-12);
    }

    [Fact]
    public void A_bit_of_50_degrees_included_makes_the_knifes_walls()
    {
        // Walls of 65 degrees leave 180 - 2 × 65 = 50 between them.
        VBit.Of(50).WallAngleFor(2).Degrees.ShouldBe(65, 1e-12);
        VBit.Of(90).WallAngleFor(2).Degrees.ShouldBe(45, 1e-12);
    }

    [Theory]
    [InlineData(19.9)]
    [InlineData(90)]
    [InlineData(double.NaN)]
    [InlineData(-65)]
    public void A_knife_held_at_an_impossible_angle_is_refused(double degrees)
    {
        Should
            .Throw<ArgumentOutOfRangeException>(() => Knife.Held(degrees))
            .Message.ShouldContain("must lie between 20 and 85 degrees from the surface");
    }

    [Fact]
    public void The_limits_themselves_are_allowed_in_either_form()
    {
        Knife.Held(85).HeldAt.Degrees.ShouldBe(85, 1e-12);
        Knife.Held(Angle.FromDegrees(85)).HeldAt.Degrees.ShouldBe(85, 1e-12);
        Knife.Held(Angle.FromDegrees(20)).HeldAt.Degrees.ShouldBe(20, 1e-12);
        VBit.Of(10).WallAngle.Degrees.ShouldBe(85, 1e-12);
        VBit.Of(140).WallAngle.Degrees.ShouldBe(20, 1e-12);
    }

    [Fact]
    public void Impossible_tools_are_refused()
    {
        Should
            .Throw<ArgumentOutOfRangeException>(() => VBit.Of(180))
            .Message.ShouldContain("The included angle must lie between 10 and 140 degrees");
        Should.Throw<ArgumentOutOfRangeException>(() => VBit.Of(60, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => Knife.Held().WithReach(0));
        Should.Throw<ArgumentOutOfRangeException>(() => Knife.Held().WithSmallestCurve(-1));
        Should.Throw<ArgumentOutOfRangeException>(() => Knife.Held().NoDeeperThan(double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => Knife.Held().DepthFor(-1));
        Should.Throw<ArgumentOutOfRangeException>(() => VBit.Of().DepthFor(double.NaN));
    }
}
