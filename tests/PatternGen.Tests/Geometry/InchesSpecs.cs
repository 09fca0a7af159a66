using System.Globalization;

namespace PatternGen.Tests.Geometry;

public class InchesSpecs
{
    [Theory]
    [InlineData("29 3/16", 741.3625)]
    [InlineData("29-3/16", 741.3625)]
    [InlineData("29 3/16\"", 741.3625)]
    [InlineData("29 3/16 in", 741.3625)]
    [InlineData(" 29.1875\" ", 741.3625)]
    [InlineData("29.1875 inches", 741.3625)]
    [InlineData("3/8", 9.525)]
    [InlineData("19/16", 30.1625)]
    [InlineData("5 ½", 139.7)]
    [InlineData("5½″", 139.7)]
    [InlineData("¾", 19.05)]
    [InlineData("2'", 609.6)]
    [InlineData("2' 5 3/16\"", 741.3625)]
    [InlineData("2'-5\"", 736.6)]
    [InlineData("2 ft 5 in", 736.6)]
    [InlineData("2ft 5-3/16", 741.3625)]
    [InlineData("0", 0)]
    [InlineData("742.5 mm", 742.5)]
    [InlineData("742.5mm", 742.5)]
    [InlineData("74.25 CM", 742.5)]
    [InlineData("0.7425 m", 742.5)]
    public void I_can_write_a_length_as_people_do(string text, double millimetres)
    {
        Inches.Parse(text).ShouldBe(millimetres, 1e-12);
        Inches.TryParse(text, out var again).ShouldBeTrue();
        again.ShouldBe(millimetres, 1e-12);
    }

    [Theory]
    [InlineData("", "number is missing", 1)]
    [InlineData("  ", "number is missing", 3)]
    [InlineData("abc", "number is expected", 1)]
    [InlineData("NaN", "number is expected", 1)]
    [InlineData("-5", "cannot be negative", 1)]
    [InlineData("29 3/0", "denominator 0", 6)]
    [InlineData("29 3/", "number is missing", 6)]
    [InlineData("29 3", "no fraction", 4)]
    [InlineData("29 19/16", "less than 1", 4)]
    [InlineData("29.5 3/16", "whole numbers only", 1)]
    [InlineData("1.5/2", "whole numbers only", 1)]
    [InlineData("29,5", "point, not a comma", 3)]
    [InlineData("1.2.3", "no number", 1)]
    [InlineData("5 furlongs", "'furlongs' is no unit", 3)]
    [InlineData("5 mm 3", "nothing can follow", 6)]
    [InlineData("2' 14\"", "less than 12", 4)]
    [InlineData("2' 5 mm", "only inches", 4)]
    [InlineData("2'-", "inches are missing", 4)]
    [InlineData("2' - ", "inches are missing", 6)]
    [InlineData("2-", "nothing can follow", 2)]
    [InlineData("2\"-", "nothing can follow", 3)]
    [InlineData("2' 5-", "nothing can follow", 5)]
    [InlineData("2'--5", "cannot be negative", 4)]
    [InlineData("1000000000000000000", "too many digits", 1)]
    [InlineData("99999999", "at most 1 km", 1)]
    [InlineData("1e9", "'e' is no unit", 2)]
    [InlineData("∞", "number is expected", 1)]
    public void An_unreadable_length_says_what_is_wrong_and_where(string text, string what, int at)
    {
        var error = Should.Throw<FormatException>(() => Inches.Parse(text));

        error.Message.ShouldContain($"\"{text}\"");
        error.Message.ShouldContain(what);
        error.Message.ShouldContain($"at character {at}.");
        error.Message.ShouldContain("What works");
        Inches.TryParse(text, out _).ShouldBeFalse();
    }

    [Fact]
    public void No_text_is_no_length()
    {
        Inches.TryParse(null, out _).ShouldBeFalse();
        Should.Throw<ArgumentNullException>(() => Inches.Parse(null!));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_language_of_the_system_does_not_matter(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new(culture);
            Inches.Parse("29.1875 IN").ShouldBe(741.3625, 1e-12);
            new Point(1.5, -2).ToString().ShouldBe("(1.5, -2)");
            Angle.FromDegrees(22.5).ToString().ShouldBe("22.5°");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e9)]
    public void Absurd_numbers_of_inches_are_refused(double inches) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Inches.ToMillimetres(inches));

    [Fact]
    public void An_inch_is_25_4_mm() => Inches.ToMillimetres(1).ShouldBe(25.4); // CSS Values, absolute lengths: 1 in = 2.54 cm
}
