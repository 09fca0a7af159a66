using System.Text.RegularExpressions;

namespace PatternGen.Tests.Samples;

/// <summary>The README says what runs.</summary>
public partial class ReadmeTests
{
    private static readonly string Readme = File.ReadAllText(Repository.File("README.md"));

    [Fact]
    public void Its_code_is_the_code_that_the_tests_run()
    {
        var shown = Shown().Matches(Readme).Select(match => Plain(match.Groups[1].Value));

        shown.ShouldBe(Run().Matches(Source()).Select(match => Plain(match.Groups[1].Value)));
    }

    [Fact]
    public void Its_first_sample_has_at_most_twelve_lines()
    {
        var first = Shown().Match(Readme).Groups[1].Value;

        first.Trim().Split('\n').Length.ShouldBeLessThanOrEqualTo(12);
    }

    [Fact]
    public void Its_links_lead_somewhere()
    {
        var links = Links().Matches(Readme).Select(match => match.Groups[1].Value).ToArray();

        links.ShouldNotBeEmpty();
        links.ShouldAllBe(link => File.Exists(Repository.File(link)));
    }

    /// <summary>The lines of code, without their indentation, blank lines and the using that every file here has.</summary>
    private static string Plain(string code) =>
        string.Join(
            '\n',
            code.Split('\n')
                .Select(line => line.Trim())
                .Where(line => line.Length > 0 && line != "using PatternGen;")
        );

    private static string Source() =>
        File.ReadAllText(
            Repository.File("tests", "PatternGen.Tests", "Samples", "ReadmeSamples.cs")
        );

    [GeneratedRegex("```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Shown();

    [GeneratedRegex("// <readme>\n(.*?)// </readme>", RegexOptions.Singleline)]
    private static partial Regex Run();

    [GeneratedRegex(@"\]\((?!http)([^)]+)\)")]
    private static partial Regex Links();
}
