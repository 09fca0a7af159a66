using PublicApiGenerator;

namespace PatternGen.Tests.Architecture;

public class PublicApiTests
{
    /// <summary>Every change of the public surface shows in review as a change of one text file.</summary>
    [Fact]
    public void The_public_api_is_the_approved_one()
    {
        var folder = Repository.File("tests", "PatternGen.Tests", "Architecture");
        var approvedPath = Path.Combine(folder, "PublicApi.approved.txt");
        var receivedPath = Path.Combine(folder, "PublicApi.received.txt");
        var options = new ApiGeneratorOptions { IncludeAssemblyAttributes = false };
        var received =
            typeof(Vector).Assembly.GeneratePublicApi(options).ReplaceLineEndings("\n") + "\n";

        if (received == File.ReadAllText(approvedPath))
            return;

        File.WriteAllText(receivedPath, received);
        Assert.Fail(
            $"""
            The public API differs from the approved one. See what changed:
                diff {approvedPath} {receivedPath}
            If the change is meant, approve it and commit it with the code:
                mv {receivedPath} {approvedPath}
            """
        );
    }
}
