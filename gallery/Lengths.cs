using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace PatternGen.Gallery;

/// <summary>Options that take lengths: plain numbers are millimetres, anything else must carry its unit.</summary>
internal static class Lengths
{
    internal static Option<double> Option(string name, string description, bool required = false) =>
        new(name)
        {
            Description = description,
            HelpName = "LENGTH",
            Required = required,
            CustomParser = result => Parse(result, result.Tokens[0].Value),
        };

    internal static Option<double?> OptionalOption(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "LENGTH",
            CustomParser = result => Parse(result, result.Tokens[0].Value),
        };

    internal static Option<double[]?> ListOption(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "LENGTH,…",
            CustomParser = result =>
                [.. result.Tokens[0].Value.Split(',').Select(text => Parse(result, text))],
        };

    private static double Parse(ArgumentResult result, string text)
    {
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var plain))
            return plain;
        // A fraction alone would be a guess at inches; the unit says it.
        if (text.Any(char.IsLetter) || text.Contains('"') || text.Contains('\''))
            try
            {
                return Inches.Parse(text);
            }
            catch (FormatException error)
            {
                result.AddError(error.Message);
                return double.NaN;
            }
        result.AddError(
            $"'{text}' is no length; write millimetres as 742.5, or add the unit, as in \"29 3/16 in\" or \"74.25 cm\"."
        );
        return double.NaN;
    }
}
