using System.ComponentModel;
using System.Diagnostics;

namespace PatternGen.Tests.Output;

/// <summary>Runs programs that the project did not write, to judge its files.</summary>
internal static class OutsideReader
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    /// <summary>
    /// Runs a program and returns what it printed. Where it is not installed the test is skipped, or fails if
    /// PATTERNGEN_READERS is "required".
    /// </summary>
    /// <param name="package">What to install to have the program.</param>
    /// <param name="program">Name or path of the program.</param>
    /// <param name="arguments">Its arguments.</param>
    public static string Run(string package, string program, params string[] arguments)
    {
        using var process = Start(package, program, arguments);
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"{program} did not end within {Patience.TotalSeconds} s.");
        }
        if (errors.Result.Contains("ModuleNotFoundError", StringComparison.Ordinal))
            Missing(package);
        process.ExitCode.ShouldBe(0, $"{program}: {output}{errors.Result}");
        return output;
    }

    private static Process Start(string package, string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception)
        {
            Missing(package);
            throw;
        }
    }

    private static void Missing(string package)
    {
        var message = $"Install it to run this test: apt-get install {package}.";
        if (Environment.GetEnvironmentVariable("PATTERNGEN_READERS") == "required")
            Assert.Fail(message);
        Assert.Skip(message);
    }
}
