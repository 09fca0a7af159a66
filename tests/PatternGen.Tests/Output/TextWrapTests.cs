namespace PatternGen.Tests.Output;

public class TextWrapTests
{
    [Fact]
    public void A_word_longer_than_the_line_is_broken()
    {
        var word = new string('W', 20_000);

        var lines = TextWrap.Lines($"A {word} Z", 2.5, 100).ToList();

        lines.ShouldAllBe(line => Lettering.Width(line, 2.5) <= 100);
        string.Concat(lines).Replace(" ", "").ShouldBe($"A{word}Z");
    }

    [Fact]
    public void A_line_narrower_than_a_character_holds_one() =>
        TextWrap.Lines("WWW", 10, 1).ShouldBe(["W", "W", "W"]);

    /// <summary>A letter and the accent that is set on it are one character to the reader.</summary>
    [Fact]
    public void An_accent_stays_with_its_letter() =>
        TextWrap.Lines("o\u0308o\u0308", 10, 1).ShouldBe(["o\u0308", "o\u0308"]);

    [Fact]
    public void Words_that_fit_stay_whole() =>
        TextWrap.Lines("one two", 10, Lettering.Width("one", 10)).ShouldBe(["one", "two"]);

    /// <summary>ISO 80000-1, 7.1.4: number and unit belong together; typographers keep them on one line.</summary>
    [Theory]
    [InlineData("Shrink to 96.1 %, or", "Shrink to 96.1", "Shrink to|96.1 %, or")]
    [InlineData("wide 3.73 mm.", "wide 3.73", "wide|3.73 mm.")]
    [InlineData("take 2 chips", "take 2", "take 2|chips")]
    public void A_number_stays_with_its_unit(string text, string room, string lines) =>
        TextWrap.Lines(text, 10, Lettering.Width(room, 10)).ShouldBe(lines.Split('|'));

    [Fact]
    public void A_number_leaves_its_unit_where_a_line_has_no_room_for_both() =>
        TextWrap.Lines("100 mm", 10, Lettering.Width("100", 10)).ShouldBe(["100", "mm"]);
}
