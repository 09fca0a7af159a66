namespace PatternGen;

/// <summary>Writes a pattern as DXF.</summary>
internal static class DxfWriter
{
    internal static void Write(Pattern pattern, OutputBuffer output, SaveOptions options) =>
        throw new NotImplementedException();
}
