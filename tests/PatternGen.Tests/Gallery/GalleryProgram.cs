using System.Diagnostics;

namespace PatternGen.Tests.Gallery;

/// <summary>Runs the gallery program as a user does: as a process.</summary>
internal sealed class GalleryProgram : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("patterngen");

    internal string Folder => _folder.FullName;

    public void Dispose() => _folder.Delete(recursive: true);

    internal (int ExitCode, string Output, string Error) Run(params string[] args)
    {
        var start = new ProcessStartInfo("dotnet", ["exec", Assembly, .. args])
        {
            WorkingDirectory = Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }

    internal string[] Files() =>
        [
            .. Directory
                .EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(Folder, file).Replace('\\', '/'))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>Built with the tests, in the same configuration.</summary>
    private static string Assembly
    {
        get
        {
            var output = new DirectoryInfo(AppContext.BaseDirectory);
            var (framework, configuration) = (output.Name, output.Parent!.Name);
            return Repository.File(
                "gallery",
                "bin",
                configuration,
                framework,
                "PatternGen.Gallery.dll"
            );
        }
    }
}
