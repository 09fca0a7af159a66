namespace PatternGen.Tests;

/// <summary>The files of this repository, found from where the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string File(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && folder.GetFiles("PatternGen.sln").Length == 0)
            folder = folder.Parent;

        return folder?.FullName
            ?? throw new DirectoryNotFoundException(
                $"No folder above {AppContext.BaseDirectory} holds PatternGen.sln."
            );
    }
}
