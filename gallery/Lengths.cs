using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace PatternGen.Gallery;

/// <summary>Options that take lengths: plain numbers are millimetres, anything else must carry its unit.</summary>
internal static class Lengths
{
    /// <summary>The library's limit for a size, said here in the words of the option.</summary>
    private const double Longest = 1e6;

    /// <summary>An option that must be given, more than 0.</summary>
    internal static Option<double> Required(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "LENGTH",
            Required = true,
            CustomParser = result => Parse(result, result.Tokens[0].Value, orZero: false),
        };

    /// <summary>An option that may be left out.</summary>
    /// <param name="name">The option.</param>
    /// <param name="description">What it says.</param>
    /// <param name="orZero">Whether 0 is a length too.</param>
    internal static Option<double?> Optional(string name, string description, bool orZero) =>
        new(name)
        {
            Description = description,
            HelpName = "LENGTH",
            CustomParser = result => Parse(result, result.Tokens[0].Value, orZero),
        };

    /// <summary>An option with several lengths, each more than 0, parted by commas or given one by one.</summary>
    internal static Option<double[]?> List(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "LENGTH,…",
            AllowMultipleArgumentsPerToken = true,
            CustomParser = result =>
                [
                    .. result
                        .Tokens.SelectMany(token => token.Value.Split(','))
                        .Select(text => Parse(result, text, orZero: false)),
                ],
        };

    private static double Parse(ArgumentResult result, string text, bool orZero)
    {
        if (!TryRead(result, text, out var length))
            return double.NaN;
        if (!(length > 0 || (orZero && length == 0)) || length > Longest)
            Refuse(
                result,
                $"'{text}' must be {(orZero ? "0 or more" : "more than 0")} and at most 1,000,000 mm."
            );
        return length;
    }

    private static bool TryRead(ArgumentResult result, string text, out double length)
    {
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out length))
            return true;
        // A fraction alone would be a guess at inches; the unit says it.
        if (text.Any(char.IsAsciiDigit) && text.AsSpan().IndexOfAny("\"'cimn") >= 0)
            try
            {
                length = Inches.Parse(text);
                return true;
            }
            catch (FormatException error)
            {
                Refuse(result, error.Message);
                return false;
            }
        Refuse(
            result,
            $"'{text}' is no length; write millimetres with a decimal point, as 742.5, or add the unit, as in \"29 3/16 in\" or \"74.25 cm\"."
        );
        return false;
    }

    private static void Refuse(ArgumentResult result, string problem)
    {
        var option = (result.Parent as OptionResult)?.Option.Name;
        result.AddError($"{option}: {problem}");
    }
}
