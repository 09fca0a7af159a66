using System.CommandLine;
using PatternGen.Gallery.Topics;

namespace PatternGen.Gallery;

/// <summary><c>rail</c>: one border for anyone's measurement.</summary>
internal static class RailCommand
{
    internal static Command Make()
    {
        var length = Lengths.Required("--length", "Length that is seen, between the shoulders");
        var width = Lengths.Required("--width", "Width of the rail");
        var rules = Lengths.List(
            "--rules",
            "Distances between the ruled lines, from below; 2,4,4,2 if left out"
        );
        var fromEdge = Lengths.Optional(
            "--from-edge",
            "Lower edge to lowest rule; centred if left out",
            orZero: true
        );
        var margin = Lengths.Optional(
            "--margin",
            "Uncarved at each end; 0 if left out",
            orZero: true
        );
        var pitch = Lengths.Optional(
            "--pitch",
            "Length of a repeat to aim at; twice the tallest row if left out",
            orZero: false
        );
        var name = new Option<string?>("--name")
        {
            Description = "What the piece is called on the print",
        };
        var output = Outputs.Option("rail");
        var command = new Command(
            "rail",
            "Fits a band of triangles to a measured rail: rail.svg, rail-print.svg, rail.dxf, rail-lines.dxf, rail.png."
        )
        {
            length,
            width,
            rules,
            fromEdge,
            margin,
            pitch,
            name,
            output,
        };
        command.SetAction(
            async (parsed, cancellation) =>
            {
                var rail = Rail.Of(parsed.GetValue(length), parsed.GetValue(width));
                if (parsed.GetValue(name) is { Length: > 0 } called)
                    rail = rail.Named(called);
                var border = rail.Border(
                        TriangleBand.Ruled(
                            parsed.GetValue(rules) is { Length: > 0 } given ? given : [2, 4, 4, 2]
                        ),
                        parsed.GetValue(fromEdge)
                    )
                    .EndMargins(parsed.GetValue(margin) ?? 0);
                if (parsed.GetValue(pitch) is { } nominal)
                    border = border.Fitted(fit => fit.Pitch(nominal));
                // An impossible fit is said before a folder is made.
                _ = border.ChipCount;
                await Reporter.RunAsync(
                    new RailTopic(border, parsed.GetValue(output)!),
                    cancellation
                );
                return ExitCode.Done;
            }
        );
        return command;
    }
}
