using System.Globalization;
using System.Text.RegularExpressions;

namespace PatternGen.Tests.Output;

/// <summary>Compares text with an approved file: the words exactly, the numbers to 1e-6.</summary>
internal static partial class Approved
{
    private const double Tolerance = 1e-6;

    /// <summary>Fails unless the text is as approved, and leaves it beside the approved file to be looked at.</summary>
    internal static void Matches(string name, string received)
    {
        var folder = Repository.File("tests", "PatternGen.Tests", "Output", "Approved");
        var approvedPath = Path.Combine(folder, name);
        var approved = File.Exists(approvedPath) ? File.ReadAllText(approvedPath) : "";
        if (IsAlike(approved, received))
            return;
        var receivedPath = Path.Combine(
            folder,
            $"{Path.GetFileNameWithoutExtension(name)}.received{Path.GetExtension(name)}"
        );
        File.WriteAllText(receivedPath, received);
        Assert.Fail(
            $"""
            {name} differs from the approved file. Look at what changed:
                diff {approvedPath} {receivedPath}
            If it is meant, approve it:
                mv {receivedPath} {approvedPath}
            """
        );
    }

    private static bool IsAlike(string a, string b) =>
        Number().Replace(a, "#") == Number().Replace(b, "#")
        && Numbers(a).Zip(Numbers(b)).All(pair => Math.Abs(pair.First - pair.Second) <= Tolerance);

    private static IEnumerable<double> Numbers(string text) =>
        Number()
            .Matches(text)
            .Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture));

    /// <summary>Numbers, but not those that are part of a word or colour.</summary>
    [GeneratedRegex(@"(?<![#\w.])-?\d+(\.\d+)?(?![\w.])|(?<=[MLA])-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
