using System.Diagnostics;
using BenchmarkDotNet.Attributes;

namespace PatternGen.Bench;

/// <summary>What a whole process takes that makes one rail, beside one that does nothing. Aim: at most 4 times.</summary>
public class StartBench
{
    private readonly string _folder = Directory.CreateTempSubdirectory("patterngen-bench").FullName;

    [Benchmark(Baseline = true)]
    public void EmptyProgram() => Run("Empty");

    [Benchmark]
    public void FitAndSaveOneRail() => Run("OneRail");

    [GlobalCleanup]
    public void CleanUp() => Directory.Delete(_folder, recursive: true);

    private void Run(string program)
    {
        var assembly = Path.Combine(
            Programs,
            program,
            "bin",
            "Release",
            "net10.0",
            $"{program}.dll"
        );
        using var process = Process.Start("dotnet", ["exec", assembly, _folder]);
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{program} ended with {process.ExitCode}.");
    }

    /// <summary>The benchmark runs from a folder of its own below the repository.</summary>
    private static string Programs
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (
                folder is not null && !File.Exists(Path.Combine(folder.FullName, "PatternGen.sln"))
            )
                folder = folder.Parent;
            return folder is null
                ? throw new InvalidOperationException(
                    "The benchmark does not run inside the repository."
                )
                : Path.Combine(folder.FullName, "tests", "bench", "programs");
        }
    }
}
