namespace PatternGen.Tests.Output;

/// <summary>A folder for one test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("patterngen-");

    /// <summary>Names of all that is in it, in order.</summary>
    internal IEnumerable<string> Names =>
        _folder.EnumerateFileSystemInfos().Select(entry => entry.Name).Order();

    internal string File(params string[] parts) => Path.Combine([_folder.FullName, .. parts]);

    public void Dispose() => _folder.Delete(recursive: true);
}
