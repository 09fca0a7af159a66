using System.CommandLine;

namespace PatternGen.Gallery;

/// <summary>The commands, and what becomes of an error.</summary>
internal static class CommandLine
{
    private const string Description = """
        Makes chip-carving patterns for measured wood: SVG, DXF and pictures.

        Examples:
          dotnet run --project gallery                 everything, into gallery/out
          dotnet run --project gallery -- rail --length 742.5 --width 36 --out my-rail
          dotnet run --project gallery -- rail --length "29 3/16 in" --width "1 1/2 in" --rules 2,4,4,2 --margin 6 --out my-rail
          dotnet run --project gallery -- all --out everything
          dotnet run --project gallery -- carving --out my-carving
          dotnet run --project gallery -- recipe my-lid.json --out my-lid

        A recipe is a pattern as a JSON file; a folder of them makes one after the other.
        Each topic is a command of its own: bands, rosettes, carving, inspection, order,
        grooves, layouts, fields, free-forms.

        Lengths are millimetres unless they carry a unit. Exit codes: 0 done, 1 impossible or
        not written, 2 wrong command line, 130 stopped.
        """;

    internal static async Task<int> RunAsync(string[] args)
    {
        var root = new RootCommand(Description)
        {
            RailCommand.Make(),
            FolderCommand.Bands(),
            FolderCommand.Rosettes(),
            FolderCommand.Carving(),
            FolderCommand.Inspection(),
            FolderCommand.Order(),
            FolderCommand.Grooves(),
            FolderCommand.Layouts(),
            FolderCommand.Fields(),
            FolderCommand.FreeForms(),
            RecipeCommand.Make(),
            AllCommand.Make(),
            FolderCommand.Readme(),
        };
        // No argument means everything.
        var parsed = root.Parse(args.Length == 0 ? [AllCommand.Name] : args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
                Console.Error.WriteLine($"gallery: {error.Message}");
            Console.Error.WriteLine(
                "gallery: '--help' lists commands, options and examples; 'all' makes everything."
            );
            return ExitCode.Usage;
        }
        try
        {
            return await parsed.InvokeAsync(new() { EnableDefaultExceptionHandler = false });
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("gallery: stopped; no file was left half-written.");
            return ExitCode.Cancelled;
        }
        catch (Exception error)
            when (error
                    is PatternException
                        or ImportException
                        or IOException
                        or UnauthorizedAccessException
            )
        {
            Console.Error.WriteLine($"gallery: {error.Message}");
            return ExitCode.Failed;
        }
        catch (ArgumentException error)
        {
            Console.Error.WriteLine($"gallery: {Plain(error)}");
            return ExitCode.Usage;
        }
    }

    /// <summary>The message as its author wrote it, without the parameter name and value that the framework adds.</summary>
    private static string Plain(ArgumentException error)
    {
        var line = error.Message.Split('\n', 2)[0].Trim();
        var added = error.ParamName is { } name ? $" (Parameter '{name}')" : "";
        return added.Length > 0 ? line.Replace(added, "", StringComparison.Ordinal) : line;
    }
}
