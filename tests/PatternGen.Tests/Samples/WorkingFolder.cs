namespace PatternGen.Tests.Samples;

/// <summary>An empty folder to run a sample in, which saves under plain names.</summary>
internal sealed class WorkingFolder : IDisposable
{
    private readonly string _before = Directory.GetCurrentDirectory();
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("patterngen");

    public WorkingFolder() => Directory.SetCurrentDirectory(_folder.FullName);

    public void Dispose()
    {
        Directory.SetCurrentDirectory(_before);
        _folder.Delete(recursive: true);
    }
}
