namespace PatternGen;

/// <summary>Reads the curves of a DXF file.</summary>
internal static class DxfReader
{
    /// <summary>Reads to the end of the stream, which stays open.</summary>
    internal static ReadDrawing Read(Stream stream, ImportSettings settings) =>
        throw new NotImplementedException();
}
