using System.CommandLine;

namespace PatternGen.Gallery;

/// <summary>What a rail and its border are described by on the command line.</summary>
internal sealed class RailOptions
{
    private static readonly double[] UsualRules = [2, 4, 4, 2];

    private readonly Option<double> _length = Lengths.Required(
        "--length",
        "Length that is seen, between the shoulders"
    );

    private readonly Option<double> _width = Lengths.Required("--width", "Width of the rail");

    private readonly Option<double[]?> _rules = Lengths.List(
        "--rules",
        "Distances between the ruled lines, from below; 2,4,4,2 if left out"
    );

    private readonly Option<double?> _fromEdge = Lengths.Optional(
        "--from-edge",
        "Lower edge to lowest rule; centred if left out",
        orZero: true
    );

    private readonly Option<double?> _margin = Lengths.Optional(
        "--margin",
        "Uncarved at each end; 0 if left out",
        orZero: true
    );

    private readonly Option<double?> _pitch = Lengths.Optional(
        "--pitch",
        "Length of a repeat to aim at; twice the tallest row if left out",
        orZero: false
    );

    private readonly Option<string?> _name = new("--name")
    {
        Description = "What the piece is called on the print",
        HelpName = "NAME",
    };

    internal IEnumerable<Option> All =>
        [_length, _width, _rules, _fromEdge, _margin, _pitch, _name];

    internal RailBorder Border(ParseResult parsed)
    {
        var rules = parsed.GetValue(_rules) is { Length: > 0 } given ? given : UsualRules;
        var border = RailOf(parsed)
            .Border(TriangleBand.Ruled(rules), parsed.GetValue(_fromEdge))
            .EndMargins(parsed.GetValue(_margin) ?? 0);
        return parsed.GetValue(_pitch) is { } pitch
            ? border.Fitted(fit => fit.Pitch(pitch))
            : border;
    }

    private Rail RailOf(ParseResult parsed)
    {
        var rail = Rail.Of(parsed.GetValue(_length), parsed.GetValue(_width));
        return parsed.GetValue(_name) is { Length: > 0 } name ? rail.Named(name) : rail;
    }
}
