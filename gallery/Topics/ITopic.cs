namespace PatternGen.Gallery.Topics;

/// <summary>A folder of files that belong together.</summary>
internal interface ITopic
{
    string Title { get; }

    string Folder { get; }

    /// <summary>The files, one after the other; each is written when its work is run.</summary>
    IReadOnlyList<Work> Works { get; }

    /// <summary>What the index page shows.</summary>
    IReadOnlyList<Exhibit> Exhibits { get; }
}

/// <summary>A file to be made.</summary>
internal sealed record Work(string File, Func<string, CancellationToken, Task> Make)
{
    /// <summary>A picture of an SVG made before it in the same folder.</summary>
    internal static Work Picture(string file, string folder, string of) =>
        new(
            file,
            (path, _) => Task.Run(() => Gallery.Picture.Save(Path.Combine(folder, of), path))
        );
}

/// <summary>A picture with its words and its files, as names within the topic's folder.</summary>
internal sealed record Exhibit(string Picture, string Caption, IReadOnlyList<string> Files);
