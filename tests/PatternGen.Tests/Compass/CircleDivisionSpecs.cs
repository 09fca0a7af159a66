using CsCheck;

namespace PatternGen.Tests.Compass;

public class CircleDivisionSpecs
{
    [Theory]
    [InlineData(3, 1.73205080756888)] // OEIS A002194
    [InlineData(4, 1.41421356237310)] // OEIS A002193
    [InlineData(5, 1.17557050458495)] // OEIS A182007
    [InlineData(6, 1.00000000000000)] // Euclid, Elements IV.15: the side of the hexagon equals the radius
    [InlineData(8, 0.765366864730180)] // OEIS A101464
    [InlineData(9, 0.684040286651337)] // OEIS A272488
    [InlineData(10, 0.618033988749895)] // OEIS A094214
    [InlineData(12, 0.517638090205042)] // OEIS A101263
    [InlineData(13, 0.478631328575116)] // OEIS A272490
    [InlineData(15, 0.415823381635519)] // OEIS A272534
    [InlineData(17, 0.367499035633141)] // OEIS A228787
    [InlineData(18, 0.347296355333861)] // OEIS A130880
    [InlineData(20, 0.312868930080462)] // OEIS A272536
    public void The_chord_is_the_published_one(int parts, double chord)
    {
        CircleDivision.Of(parts, 1).Chord.ShouldBe(chord, 6e-15);
        CircleDivision.Of(parts, 40).Chord.ShouldBe(40 * chord, 3e-13);
    }

    [Theory]
    [InlineData(5, 0.587785252292473)]
    [InlineData(9, 0.342020143325669)]
    [InlineData(12, 0.258819045102521)]
    [InlineData(21, 0.149042266176174)]
    public void Chords_for_a_diameter_of_1_are_those_of_the_handbook(int parts, double chord) =>
        // Machinery's Handbook, lengths of chords for spacing off the circumferences of circles
        CircleDivision.Of(parts, 0.5).Chord.ShouldBe(chord, 5e-15);

    [Fact]
    public void The_printed_example_of_24_parts_of_a_radius_of_3()
    {
        // Engineering ToolBox, Chord Lengths when Dividing a Circle: chord 0.7833 printed, 0.783157153320 computed
        CircleDivision.Of(24, 3).Chord.ShouldBe(0.783157153320, 1e-12);
        CircleDivision.Of(24, 3).Chord.ShouldBe(0.7833, 2e-4);
    }

    [Fact]
    public void The_numbers_with_a_construction_are_exact() =>
        Enumerable
            .Range(2, 35)
            .Where(parts => CircleDivision.Of(parts, 40).IsExact)
            .ShouldBe([2, 3, 4, 5, 6, 8, 10, 12, 16]);

    [Theory]
    [InlineData(0.1, 27.4)]
    [InlineData(0.25, 27.25)]
    [InlineData(0.5, 27.5)]
    [InlineData(1, 27)]
    public void The_setting_is_read_as_a_rule_shows_it(double reading, double setting) =>
        // 80 sin 20° = 27.3616...
        CircleDivision.Of(9, 40).Setting(reading).ShouldBe(setting);

    [Fact]
    public void The_closing_error_is_what_a_walk_by_coordinates_misses()
    {
        Gen.Select(
                Gen.Int[3, 60],
                Gen.Double[15, 400],
                Gen.OneOf(Gen.Const(0.05), Gen.Const(0.1), Gen.Const(0.25), Gen.Const(0.5))
            )
            .Sample(
                (parts, radius, reading) =>
                {
                    var division = CircleDivision.Of(parts, radius);
                    var setting = Math.Round(division.Chord / reading) * reading;
                    // Each step by the law of cosines, added up.
                    var cos = 1 - setting * setting / (2 * radius * radius);
                    var turned = parts * Math.Acos(cos) - 2 * Math.PI;

                    division.ClosingError(reading).ShouldBe(turned * radius, 1e-8 * radius);
                    division
                        .StepError(reading)
                        .Degrees.ShouldBe(turned / parts * 180 / Math.PI, 1e-6);
                }
            );
    }

    [Fact]
    public void The_radius_closes_whatever_the_reading_of_a_whole_radius() // Euclid, Elements IV.15
    {
        CircleDivision.Of(6, 40).ClosingError(0.1).ShouldBe(0, 1e-12);
        CircleDivision.Of(6, 40).ClosingError(0.25).ShouldBe(0, 1e-12);
    }

    [Fact]
    public void Too_wide_a_setting_ends_past_the_start_and_too_narrow_a_one_short_of_it()
    {
        // 27.4 and 27.25 mm against a chord of 27.3616 mm
        CircleDivision.Of(9, 40).ClosingError(0.1).ShouldBeGreaterThan(0);
        CircleDivision.Of(9, 40).ClosingError(0.25).ShouldBeLessThan(0);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void A_circle_k_times_as_large_leaves_one_kth_of_what_is_missed_on_it(int factor)
    {
        // Joshua Rose, Modern Machine-Shop Practice: three times as large leaves a third
        foreach (var parts in (int[])[7, 9, 11, 13, 36])
        {
            var larger = CircleDivision.Of(parts, 40).OnLargerCircle(factor);

            larger.Chord.ShouldBe(factor * CircleDivision.Of(parts, 40).Chord, 1e-12);
            larger
                .ClosingError(0.1)
                .ShouldBe(CircleDivision.Of(parts, factor * 40).ClosingError(0.1) / factor, 1e-9);
        }
    }

    [Fact]
    public void The_larger_circle_that_is_suggested_is_the_smallest_that_is_enough()
    {
        for (var parts = 7; parts <= 60; parts++)
        {
            var division = CircleDivision.Of(parts, 40);
            var factor = division.LargerCircle(0.25);

            Math.Abs(division.OnLargerCircle(factor).ClosingError(0.25))
                .ShouldBeLessThanOrEqualTo(0.25);
            for (var less = 1; less < factor; less++)
                Math.Abs(division.OnLargerCircle(less).ClosingError(0.25))
                    .ShouldBeGreaterThan(0.25);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(361)]
    public void Absurd_counts_are_refused(int parts) =>
        Should.Throw<ArgumentOutOfRangeException>(() => CircleDivision.Of(parts, 40));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e12)]
    public void Absurd_sizes_are_refused(double size)
    {
        Should.Throw<ArgumentOutOfRangeException>(() => CircleDivision.Of(7, size));
        Should.Throw<ArgumentOutOfRangeException>(() => CircleDivision.Of(7, 40).Setting(size));
        Should.Throw<ArgumentOutOfRangeException>(() =>
            CircleDivision.Of(7, 40).LargerCircle(0.1, size)
        );
        Should.Throw<ArgumentOutOfRangeException>(() =>
            CircleDivision.Of(7, 40).OnLargerCircle(size)
        );
    }

    [Fact]
    public void A_reading_too_coarse_for_the_circle_is_refused_with_remedies()
    {
        var error = Should.Throw<PatternException>(() =>
            CircleDivision.Of(60, 1).ClosingError(0.25)
        );

        error.Message.ShouldContain("0 mm");
        error.Remedies.ShouldNotBeEmpty();
        // As does a setting that rounds up to more than the diameter: √3 × 0.1 = 0.17 read to 0.25.
        Should.Throw<PatternException>(() => CircleDivision.Of(3, 0.1).ClosingError(0.25));
        Should.Throw<PatternException>(() => CircleDivision.Of(360, 1).LargerCircle(0.25, 1e-6));
    }
}
