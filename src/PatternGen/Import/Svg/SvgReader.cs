using Svg;

namespace PatternGen;

/// <summary>Reads the curves of an SVG file.</summary>
internal static class SvgReader
{
    /// <summary>Reads to the end of the stream, which stays open.</summary>
    /// <exception cref="ImportException">It is no SVG, or beyond the limits.</exception>
    internal static ReadDrawing Read(Stream stream, ImportedCurves curves)
    {
        using var copy = new MemoryStream();
        var copied = SvgGate.Copy(stream, copy, curves);
        copy.Position = 0;
        var document = SvgDocument.Open<SvgDocument>(copy);
        var index = new SvgIndex(document, curves.Settings.Limits, isChecked: true);
        return index.Count == copied
            ? SvgWalker.Read(document, curves, index)
            : throw new ImportException(
                $"Of {copied} elements the SVG reader understood {index.Count}.",
                null,
                ["the file written anew as plain SVG"]
            );
    }

    /// <summary>Reads a caller's document, which stays as it is.</summary>
    /// <exception cref="ImportException">It is beyond the limits.</exception>
    internal static ReadDrawing Read(SvgDocument document, ImportSettings settings) =>
        SvgWalker.Read(document, new(settings), new(document, settings.Limits, isChecked: false));
}
