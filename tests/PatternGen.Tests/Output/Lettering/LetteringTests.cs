using System.Globalization;

namespace PatternGen.Tests.Output;

public sealed class LetteringTests
{
    private const string Sample = "Rail 742.5 × 36 mm, 29 3/16 in, Größe żółć “AV”";

    [Fact]
    public void Text_stands_on_the_baseline_with_capitals_of_the_height_asked_for()
    {
        var extents = Lettering.Strokes("H", 3.5)[0].Extents;

        extents.Min.Y.ShouldBe(0);
        extents.Max.Y.ShouldBe(3.5);
        extents.Min.X.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Every_character_makes_a_line_wider() =>
        Characters
            .All.Where(character =>
                !(Lettering.Width($"A{character}", 1) > Lettering.Width("A", 1))
            )
            .ShouldBeEmpty();

    [Fact]
    public void Scaling_is_exact()
    {
        var small = Points(Lettering.Strokes(Sample, 1));
        var large = Points(Lettering.Strokes(Sample, 7.3));

        large.ShouldBe(small.Select(point => new Point(point.X * 7.3, point.Y * 7.3)));
        Lettering.Width(Sample, 7.3).ShouldBe(Lettering.Width(Sample, 1) * 7.3);
    }

    [Theory]
    [InlineData("AV")]
    [InlineData("To")]
    [InlineData("LT")]
    [InlineData("P.")]
    [InlineData("r,")]
    public void Kerned_pairs_stand_closer(string pair) =>
        Lettering
            .Width(pair, 1)
            .ShouldBeLessThan(Lettering.Width(pair[..1], 1) + Lettering.Width(pair[1..], 1));

    [Fact]
    public void Neighbours_never_come_nearer_than_a_pen_stroke()
    {
        var letters = Characters.Ascii;

        var close =
            from left in letters
            from right in letters
            where Kerning.Between(left, right) > 0 && Gap(left, right) < 0.13
            select $"{left}{right}";

        close.ShouldBeEmpty();
    }

    [Fact]
    public void What_has_no_shape_is_one_empty_box()
    {
        // A control character, lone surrogates, and characters of other scripts. Not a theory: lone surrogates do
        // not survive being passed as test data.
        foreach (var unknown in (string[])["\u0007", "\uD83D", "\uDE00", "😀", "漢", "\uFFFD"])
        {
            var box = Lettering.Strokes(unknown, 1).ShouldHaveSingleItem();
            box.Start.ShouldBe(box.End);
            box.Count.ShouldBe(4);
        }
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\t")]
    [InlineData("\u00A0")]
    public void White_space_is_a_space(string space)
    {
        Lettering.Strokes(space, 1).ShouldBeEmpty();
        Lettering.Width(space, 1).ShouldBe(Lettering.Width(" ", 1));
    }

    [Theory]
    [InlineData("e\u0301", "é")]
    [InlineData("i\u0308", "ï")]
    [InlineData("L\u030C", "Ľ")]
    [InlineData("s\u0327", "ş")]
    public void A_letter_with_a_mark_of_its_own_is_the_accented_letter(string two, string one) =>
        Points(Lettering.Strokes(two, 1)).ShouldBe(Points(Lettering.Strokes(one, 1)));

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("sv-SE")]
    public void The_language_of_the_system_changes_nothing(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        var expected = GlyphSheet.Drawn("4 4.5 ^2 0,-1 -3.5,10.25@-10 ~ 7,9e");
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            var glyph = GlyphSheet.Drawn("4 4.5 ^2 0,-1 -3.5,10.25@-10 ~ 7,9e");
            glyph.Advance.ShouldBe(expected.Advance);
            Points(glyph.Strokes).ShouldBe(Points(expected.Strokes));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Many_threads_draw_the_same()
    {
        var expected = Points(Lettering.Strokes(Sample, 2));

        Parallel.For(0, 64, _ => Points(Lettering.Strokes(Sample, 2)).ShouldBe(expected));
    }

    [Fact]
    public void An_empty_line_is_nothing()
    {
        Lettering.Strokes("", 1).ShouldBeEmpty();
        Lettering.Width("", 1).ShouldBe(0);
        Lettering.Box("", 2).Height.ShouldBe(2 * (Lettering.Ascender - Lettering.Descender), 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_height_that_is_no_size_is_refused(double height)
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Lettering.Strokes("A", height));
        Should.Throw<ArgumentOutOfRangeException>(() => Lettering.Width("A", height));
        Should.Throw<ArgumentOutOfRangeException>(() => Lettering.Box("A", height));
    }

    private static Point[] Points(IEnumerable<Chain> strokes) =>
        [.. strokes.SelectMany(stroke => stroke.Vertices).Select(vertex => vertex.Point)];

    /// <summary>The distance between two characters side by side, measured from points along the first.</summary>
    private static double Gap(char left, char right)
    {
        var first = Lettering.Strokes(left.ToString(), 1);
        var second = Lettering
            .Strokes($"{left}{right}", 1)
            .Skip(first.Count)
            .SelectMany(stroke => stroke.Segments)
            .ToArray();
        return first
            .SelectMany(stroke => stroke.Segments)
            .SelectMany(segment =>
                Enumerable.Range(0, 33).Select(i => segment.PointAt(segment.Length * i / 32))
            )
            .Min(point => second.Min(segment => segment.DistanceTo(point)));
    }
}
