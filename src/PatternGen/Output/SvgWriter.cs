namespace PatternGen;

/// <summary>Writes a pattern as SVG.</summary>
internal static class SvgWriter
{
    internal static void Write(
        Pattern pattern,
        OutputBuffer output,
        For purpose,
        SaveOptions options
    ) => throw new NotImplementedException();
}
