namespace PatternGen.Tests.Output;

public sealed class FractionTests
{
    [Theory]
    [InlineData("3/16")]
    [InlineData("29 3/16 in")]
    [InlineData("(1/2)")]
    [InlineData("±1/64")]
    [InlineData("3/4\"")]
    [InlineData("is 3/4.")]
    [InlineData("1/4, 1/8")]
    public void A_fraction_that_stands_alone_is_set_small(string text) =>
        HasSmallFractions(text).ShouldBeTrue();

    [Theory]
    [InlineData("and/or")]
    [InlineData("1/")]
    [InlineData("/2")]
    [InlineData("1 / 2")]
    [InlineData("31/12/2024")]
    [InlineData("2023/2024")]
    [InlineData("A1/2")]
    [InlineData("1/2b")]
    [InlineData("1.1/2")]
    [InlineData("1/2.5")]
    [InlineData("1/2/3")]
    public void Other_slashes_are_set_as_they_are(string text) =>
        HasSmallFractions(text).ShouldBeFalse();

    [Fact]
    public void The_space_before_a_fraction_is_narrow() =>
        Lettering
            .Width("29 3/16", 1)
            .ShouldBeLessThan(
                Lettering.Width("29", 1)
                    + Lettering.Width(" ", 1)
                    + Lettering.Width("3/16", 1)
                    - 0.1
            );

    [Fact]
    public void The_space_after_a_word_is_not() =>
        Lettering
            .Width("in 3/16", 1)
            .ShouldBe(
                Lettering.Width("in", 1) + Lettering.Width(" ", 1) + Lettering.Width("3/16", 1),
                1e-12
            );

    [Theory]
    [InlineData("½", "1/2")]
    [InlineData("¾", "3/4")]
    [InlineData("⅝", "5/8")]
    public void Signs_for_fractions_are_set_like_fractions(string sign, string fraction) =>
        Lettering
            .Strokes(sign, 1)
            .SelectMany(stroke => stroke.Segments)
            .ShouldBe(Lettering.Strokes(fraction, 1).SelectMany(stroke => stroke.Segments));

    [Fact]
    public void Figures_stand_from_the_baseline_to_the_cap_height()
    {
        var extents = Lettering.Strokes("15/64", 2).Select(stroke => stroke.Extents).ToArray();

        extents.Min(stroke => stroke.Min.Y).ShouldBe(0, 1e-12);
        extents.Max(stroke => stroke.Max.Y).ShouldBe(2, 1e-12);
    }

    [Fact]
    public void Figures_and_bar_keep_apart()
    {
        // One, bar, one: three strokes.
        var strokes = Lettering.Strokes("1/1", 1);

        strokes.Count.ShouldBe(3);
        foreach (var figure in (Chain[])[strokes[0], strokes[2]])
        foreach (var corner in figure.Vertices)
            strokes[1].SegmentAt(0).DistanceTo(corner.Point).ShouldBeGreaterThan(0.13);
    }

    /// <summary>Small figures do not have the strokes of the same text cut into single characters.</summary>
    private static bool HasSmallFractions(string text)
    {
        var apart = text.Select(character => Lettering.Strokes(character.ToString(), 1)).Sum(Ink);
        return Math.Abs(Ink(Lettering.Strokes(text, 1)) - apart) > 1e-9;
    }

    private static double Ink(IReadOnlyList<Chain> strokes) => strokes.Sum(stroke => stroke.Length);
}
