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
}
