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

    /// <summary>Compiled ahead by the build's Precompile target, as a program that must start fast is shipped.</summary>
    [Benchmark]
    public void FitAndSaveOneRailPrecompiled() =>
        RunAssembly(Path.Combine(Root, "artifacts", "start", "OneRail.dll"));

    [GlobalCleanup]
    public void CleanUp() => Directory.Delete(_folder, recursive: true);

    private void Run(string program) =>
        RunAssembly(
            Path.Combine(
                Root,
                "tests",
                "bench",
                "programs",
                program,
                "bin",
                "Release",
                "net10.0",
                $"{program}.dll"
            )
        );

    private void RunAssembly(string assembly)
    {
        using var process = Process.Start("dotnet", ["exec", assembly, _folder]);
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{assembly} ended with {process.ExitCode}.");
    }

    /// <summary>The benchmark runs from a folder of its own below the repository.</summary>
    private static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (
                folder is not null && !File.Exists(Path.Combine(folder.FullName, "PatternGen.sln"))
            )
                folder = folder.Parent;
            return folder?.FullName
                ?? throw new InvalidOperationException(
                    "The benchmark does not run inside the repository."
                );
        }
    }
}
