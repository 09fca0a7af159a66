namespace PatternGen;

/// <summary>Writes a file so that it is either there, whole, or not touched at all.</summary>
internal static class TargetFile
{
    /// <summary>Writes to a temporary file beside the target, which it replaces when complete.</summary>
    /// <param name="path">Where to. A link is followed, a device is written to straight.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="IOException">The file can't be written; an older file of that name is as it was.</exception>
    internal static void Write(string path, Action<Stream> write)
    {
        try
        {
            var target = TargetOf(Path.GetFullPath(path));
            Refuse(target);
            if (CanBeReplaced(target))
                WriteBeside(target, write);
            else
                WriteStraight(target, write);
        }
        catch (Exception error) when (error is UnauthorizedAccessException or IOException)
        {
            throw new IOException(Explain(path, error), error);
        }
    }

    /// <summary>The file that a chain of links ends at, or the path itself. The links among devices lead to no path.</summary>
    private static string TargetOf(string path) =>
        IsAmongDevices(path) || !File.Exists(path)
            ? path
            : File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;

    private static void Refuse(string target)
    {
        if (Directory.Exists(target))
            throw new UnauthorizedAccessException("It is a folder.");
        if (File.Exists(target) && File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
            throw new UnauthorizedAccessException("The file is read-only.");
    }

    private static void WriteBeside(string target, Action<Stream> write)
    {
        var folder = Path.GetDirectoryName(target) ?? target;
        var part = Path.Combine(folder, $".{Path.GetRandomFileName()}.part");
        try
        {
            using (var stream = new FileStream(part, FileMode.CreateNew, FileAccess.Write))
            {
                write(stream);
                stream.Flush();
            }
            KeepMode(target, part);
            File.Move(part, target, overwrite: true);
        }
        catch
        {
            File.Delete(part);
            throw;
        }
    }

    /// <summary>Who may read and write the file stays as it was.</summary>
    private static void KeepMode(string target, string part)
    {
        if (!OperatingSystem.IsWindows() && File.Exists(target))
            File.SetUnixFileMode(part, File.GetUnixFileMode(target));
    }

    /// <summary>Something like /dev/stdout can't be replaced, only written to.</summary>
    private static void WriteStraight(string target, Action<Stream> write)
    {
        using var stream = new FileStream(target, FileMode.Open, FileAccess.Write);
        write(stream);
    }

    /// <summary>Whether a new file can take the target's place: not so for devices and pipes, which can't be rewound.</summary>
    private static bool CanBeReplaced(string target)
    {
        if (IsAmongDevices(target))
            return false;
        if (!File.Exists(target))
            return true;
        using var probe = new FileStream(target, FileMode.Open, FileAccess.Write);
        return probe.CanSeek;
    }

    /// <summary>On Unix the framework does not tell devices from files, but they have folders of their own.</summary>
    private static bool IsAmongDevices(string path) =>
        !OperatingSystem.IsWindows()
        && (StartsWith(path, "/dev/") || StartsWith(path, "/proc/"))
        && !StartsWith(path, "/dev/shm/");

    private static bool StartsWith(string path, string folder) =>
        path.StartsWith(folder, StringComparison.Ordinal);

    private static string Explain(string path, Exception error)
    {
        var (why, remedy) = error switch
        {
            DirectoryNotFoundException => (
                "its folder does not exist",
                "create the folder first or choose one that exists"
            ),
            UnauthorizedAccessException => (
                error.Message.TrimEnd('.'),
                "make it writable or save under another name"
            ),
            _ => (error.Message.TrimEnd('.'), "free some space or choose another place"),
        };
        return $"'{path}' could not be written ({why}), and nothing was changed: {remedy}.";
    }
}
