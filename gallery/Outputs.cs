using System.CommandLine;

namespace PatternGen.Gallery;

/// <summary>The option that says where files go.</summary>
internal static class Outputs
{
    internal static Option<string> Option(string standard) =>
        new("--out", "-o")
        {
            Description = "Folder for the files; made if it is not there",
            HelpName = "DIR",
            DefaultValueFactory = _ => standard,
            Validators =
            {
                result =>
                {
                    if (string.IsNullOrWhiteSpace(result.GetValueOrDefault<string>()))
                        result.AddError("--out: a folder is needed, such as my-rail.");
                },
            },
        };
}
