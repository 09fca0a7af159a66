using System.CommandLine;
using PatternGen.Gallery.Topics;

namespace PatternGen.Gallery;

/// <summary><c>rail</c>: one border for anyone's measurement.</summary>
internal static class RailCommand
{
    internal static Command Make()
    {
        var options = new RailOptions();
        var output = Outputs.Option("rail");
        var command = new Command(
            "rail",
            "Fits a band of triangles to a measured rail: rail.svg, rail-print.svg, rail.dxf, rail-lines.dxf, rail.png."
        );
        foreach (var option in options.All)
            command.Options.Add(option);
        command.Options.Add(output);
        command.SetAction(
            async (parsed, cancellation) =>
            {
                var border = options.Border(parsed);
                // An impossible fit is said before a folder is made.
                _ = border.ChipCount;
                var topic = new RailTopic(border, parsed.GetValue(output)!);
                await Reporter.RunAsync(topic, cancellation);
                return ExitCode.Done;
            }
        );
        return command;
    }
}
