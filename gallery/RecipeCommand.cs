using System.CommandLine;
using PatternGen.Gallery.Topics;

namespace PatternGen.Gallery;

/// <summary><c>recipe</c>: what recipe files describe, of one file or of all in a folder.</summary>
internal static class RecipeCommand
{
    internal static Command Make()
    {
        var source = new Argument<string>("source")
        {
            Description = "A recipe file, or a folder of .json files",
            HelpName = "FILE|FOLDER",
        };
        var output = Outputs.Option("recipes");
        var command = new Command(
            "recipe",
            "Makes what recipe files describe: of each an SVG, a DXF and a picture."
        )
        {
            source,
            output,
        };
        command.SetAction(
            (parsed, cancellation) =>
                RunAsync(parsed.GetValue(source)!, parsed.GetValue(output)!, cancellation)
        );
        return command;
    }

    /// <summary>One bad recipe does not keep the others from being made; the exit code says that there was one.</summary>
    private static async Task<int> RunAsync(
        string source,
        string folder,
        CancellationToken cancellation
    )
    {
        var exitCode = ExitCode.Done;
        foreach (var file in FilesIn(source))
            try
            {
                var topic = new RecipesTopic([file], folder);
                await Reporter.RunAsync(topic, cancellation);
            }
            catch (Exception error)
                when (error
                        is ImportException
                            or PatternException
                            or IOException
                            or UnauthorizedAccessException
                )
            {
                Console.Error.WriteLine($"gallery: {file}: {error.Message}");
                exitCode = ExitCode.Failed;
            }
        return exitCode;
    }

    private static IReadOnlyList<string> FilesIn(string source)
    {
        if (!Directory.Exists(source))
            return [source];
        string[] files =
        [
            .. Directory.EnumerateFiles(source, "*.json").Order(StringComparer.Ordinal),
        ];
        return files.Length > 0
            ? files
            : throw new IOException($"The folder '{source}' holds no .json file.");
    }
}
