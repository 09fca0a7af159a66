namespace PatternGen;

/// <summary>Opens files to import and tells what is in them.</summary>
internal static class SourceFile
{
    /// <summary>Bytes that are looked at.</summary>
    private const int Head = 4096;

    /// <summary>Opens a file that others may read too.</summary>
    internal static FileStream Open(string path) =>
        new(
            path,
            FileMode.Open,
            FileAccess.Read,
            FileShare.Read,
            1 << 16,
            FileOptions.SequentialScan
        );

    /// <summary>Which kind a file is: by its name, or else by how it begins.</summary>
    /// <exception cref="ImportException">It is neither.</exception>
    internal static FileFormat FormatOf(string path, FileStream file)
    {
        var extension = Path.GetExtension(path);
        if (extension.Equals(".svg", StringComparison.OrdinalIgnoreCase))
            return FileFormat.Svg;
        if (extension.Equals(".dxf", StringComparison.OrdinalIgnoreCase))
            return FileFormat.Dxf;
        var head = new byte[Head];
        var length = file.ReadAtLeast(head, Head, throwOnEndOfStream: false);
        file.Position = 0;
        return FormatOf(head.AsSpan(0, length))
            ?? throw new ImportException(
                $"\"{Path.GetFileName(path)}\" is neither SVG nor DXF, by its name or its content.",
                "line 1",
                ["an SVG or ASCII DXF file", "Import.Drawing(stream, format), to say what it is"]
            );
    }

    /// <summary>XML begins with an angle bracket, DXF with a group code: a number alone on its line.</summary>
    private static FileFormat? FormatOf(ReadOnlySpan<byte> head)
    {
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        if (head.StartsWith(mark))
            head = head[mark.Length..];
        var text = head.TrimStart(" \t\r\n"u8);
        if (text.StartsWith("<"u8))
            return FileFormat.Svg;
        var end = text.IndexOfAny((byte)'\r', (byte)'\n');
        var code = end < 0 ? text : text[..end];
        return int.TryParse(code, System.Globalization.CultureInfo.InvariantCulture, out _)
            ? FileFormat.Dxf
            : null;
    }
}
