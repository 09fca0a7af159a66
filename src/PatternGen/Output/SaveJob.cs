using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One pattern to be written one way: what saving to files and to streams, at once or not, have in common.</summary>
internal sealed class SaveJob(
    Pattern pattern,
    FileFormat format,
    For purpose,
    SaveOptions? chosen,
    CancellationToken cancellation = default
)
{
    private readonly SaveOptions _options = chosen ?? SaveOptions.Default;

    internal SaveResult ToFile(string path)
    {
        Check();
        TargetFile.Write(path, stream => Write(new(stream, cancellation: cancellation)));
        return new(pattern, _options);
    }

    /// <param name="stream">Any writable stream; it stays open.</param>
    /// <param name="asynchronous">Whether to use the stream's asynchronous writing.</param>
    internal SaveResult ToStream(Stream stream, bool asynchronous)
    {
        Check();
        Write(new(stream, asynchronous, cancellation));
        return new(pattern, _options);
    }

    private void Write(OutputBuffer output)
    {
        using (output)
        {
            if (format == FileFormat.Dxf)
                DxfWriter.Write(pattern, output, _options);
            else
                SvgWriter.Write(pattern, output, purpose, _options);
            output.Flush();
        }
    }

    /// <summary>Refuses what can't be written, before anything is.</summary>
    private void Check()
    {
        Guard.NotNull(pattern);
        Guard.Defined(format);
        Guard.Defined(purpose);
        if (format == FileFormat.Dxf && purpose != For.Machine)
            throw new ArgumentException(
                $"A DXF is for a machine, not for {purpose}; save as .svg to look at it or to print it.",
                nameof(purpose)
            );
        if (pattern.Extents is null && !pattern.Root.Layers.HasFlag(LayerSet.Labels))
            throw new PatternException(
                "The pattern is empty: there is nothing to draw.",
                remedies: ["add chips, line cuts, layout lines, labels or an outline before saving"]
            );
        foreach (var text in Texts())
            OutputText.Checked(text);
    }

    private IEnumerable<string> Texts() =>
        [
            pattern.Name ?? "",
            .. pattern.Caption(_options.Wording),
            .. pattern.Labels.Select(label => label.Text),
        ];
}
