namespace PatternGen;

/// <summary>Writes a file so that it is either there, whole, or not touched at all.</summary>
internal static class TargetFile
{
    /// <summary>Writes to a temporary file beside the target, which it replaces when complete.</summary>
    /// <exception cref="IOException">The file can't be written; an older file of that name is as it was.</exception>
    internal static void Write(string path, Action<Stream> write)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var target = Path.GetFullPath(path);
        RefuseReadOnly(target);
        if (IsDevice(target))
        {
            Guarded(path, () => WriteStraight(target, write));
            return;
        }
        Guarded(path, () => WriteBeside(target, write));
    }

    private static void WriteBeside(string target, Action<Stream> write)
    {
        var part = $"{target}.{Path.GetRandomFileName()}.part";
        try
        {
            using (var stream = new FileStream(part, FileMode.CreateNew, FileAccess.Write))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }
            File.Move(part, target, overwrite: true);
        }
        catch
        {
            File.Delete(part);
            throw;
        }
    }

    /// <summary>Something like /dev/stdout can't be replaced, only written to.</summary>
    private static void WriteStraight(string target, Action<Stream> write)
    {
        using var stream = new FileStream(target, FileMode.Open, FileAccess.Write);
        write(stream);
    }

    private static bool IsDevice(string target) =>
        File.Exists(target) && File.GetAttributes(target).HasFlag(FileAttributes.Device);

    private static void RefuseReadOnly(string target)
    {
        if (File.Exists(target) && File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
            throw new IOException(
                $"'{target}' is read-only and was left as it is; save under another name or make it writable."
            );
    }

    private static void Guarded(string path, Action write)
    {
        try
        {
            write();
        }
        catch (Exception error)
            when (error is UnauthorizedAccessException or DirectoryNotFoundException)
        {
            throw new IOException(
                $"'{path}' can't be written ({error.Message}); choose a folder that exists and that you may write to.",
                error
            );
        }
        catch (IOException error)
        {
            throw new IOException(
                $"'{path}' could not be written whole ({error.Message}); nothing was changed. Free some space or choose another place.",
                error
            );
        }
    }
}
