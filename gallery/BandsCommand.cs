using System.CommandLine;
using PatternGen.Gallery.Topics;

namespace PatternGen.Gallery;

/// <summary><c>bands</c>: the sample bands, each and all on one sheet.</summary>
internal static class BandsCommand
{
    internal static Command Make()
    {
        var output = Outputs.Option("bands");
        var command = new Command(
            "bands",
            "Draws the sample bands, each by itself and all on one sheet."
        )
        {
            output,
        };
        command.SetAction(
            async (parsed, cancellation) =>
            {
                await Reporter.RunAsync(new BandsTopic(parsed.GetValue(output)!), cancellation);
                return ExitCode.Done;
            }
        );
        return command;
    }
}
