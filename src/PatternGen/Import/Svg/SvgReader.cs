namespace PatternGen;

/// <summary>Reads the curves of an SVG file.</summary>
internal static class SvgReader
{
    /// <summary>Reads to the end of the stream, which stays open.</summary>
    internal static ReadDrawing Read(Stream stream, ImportSettings settings) =>
        throw new NotImplementedException();
}
