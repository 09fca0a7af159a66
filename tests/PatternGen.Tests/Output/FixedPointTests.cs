using System.Globalization;
using System.Text;
using CsCheck;

namespace PatternGen.Tests.Output;

public class FixedPointTests
{
    /// <summary>Every double in this range is a decimal of at most 28 digits, or so small that it rounds to 0.</summary>
    private static readonly Gen<double> Coordinates = Gen.OneOf(
        Gen.Double[-1e6, 1e6],
        Gen.Double[-1, 1],
        Gen.Double[-1e-6, 1e-6],
        Gen.Int[-1_000_000, 1_000_000].Select(whole => whole / 64.0),
        Gen.Int[-1_000_000, 1_000_000].Select(tenths => tenths / 10.0)
    );

    [Fact]
    public void Numbers_are_rounded_as_decimal_rounds_them() =>
        Coordinates
            .Select(Gen.Int[0, 9])
            .Sample((value, decimals) => Text(value, decimals) == Expected(value, decimals));

    /// <summary>A number of sixty-fourths has at most six decimals, so that many lie half-way at fewer.</summary>
    [Fact]
    public void Exact_ties_go_to_the_even_neighbour()
    {
        for (var parts = -6400; parts <= 6400; parts++)
        for (var decimals = 0; decimals <= 5; decimals++)
            Text(parts / 64.0, decimals).ShouldBe(Expected(parts / 64.0, decimals));
    }

    [Fact]
    public void Numbers_beside_a_tie_go_to_the_nearer_neighbour() =>
        Gen.Int[-100_000_000, 100_000_000]
            .Select(Gen.Int[3, 9])
            .Sample(
                (units, decimals) =>
                {
                    var tie = (units + 0.5) / Math.Pow(10, decimals);
                    return new[] { tie, Math.BitIncrement(tie), Math.BitDecrement(tie) }.All(
                        value => Text(value, decimals) == Expected(value, decimals)
                    );
                }
            );

    [Theory]
    [InlineData(0, 6, "0")]
    [InlineData(-0.0000004, 6, "0")]
    [InlineData(0.0000005, 6, "0")]
    [InlineData(0.00000051, 6, "0.000001")]
    [InlineData(-12.5, 6, "-12.5")]
    [InlineData(742.5, 6, "742.5")]
    [InlineData(0.1, 6, "0.1")]
    [InlineData(100, 6, "100")]
    [InlineData(999.9999999, 6, "1000")]
    [InlineData(2.5, 0, "2")]
    [InlineData(3.5, 0, "4")]
    [InlineData(0.0000012345678901, 18, "0.0000012345678901")]
    public void Numbers_have_no_more_digits_than_they_need(
        double value,
        int decimals,
        string expected
    ) => Text(value, decimals).ShouldBe(expected);

    [Fact]
    public void Zero_has_no_sign() => Text(-0.0, 6).ShouldBe("0");

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1e300)]
    [InlineData(1e10)]
    public void What_is_no_coordinate_is_refused(double value) =>
        Should.Throw<PatternException>(() => Text(value, 6)).Message.ShouldContain("6 decimals");

    private static string Text(double value, int decimals)
    {
        Span<byte> digits = stackalloc byte[FixedPoint.MaxLength];
        return Encoding.ASCII.GetString(digits[..FixedPoint.Write(digits, value, decimals)]);
    }

    /// <summary>The exact value of the double, rounded half to even by decimal arithmetic.</summary>
    private static string Expected(double value, int decimals)
    {
        var rounded = decimal.Round(Exact(value), decimals, MidpointRounding.ToEven);
        var text = rounded.ToString("0.##################", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>
    /// The framework prints a double exactly when asked for enough digits; decimal holds 28 of them, which decides
    /// every case except a tie with a tail beyond them, and doubles of this size have none that long.
    /// </summary>
    private static decimal Exact(double value) =>
        decimal.Parse(
            value.ToString("F27", CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );
}
