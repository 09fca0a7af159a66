using System.Text;

namespace PatternGen.Tests.Importing.Dxf;

/// <summary>Small DXF files for tests, written as "code value code value …" with blanks between.</summary>
internal static class DxfFile
{
    /// <summary>The groups on their lines.</summary>
    internal static string Groups(string groups, string lineEnd = "\n")
    {
        var words = groups.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return string.Concat(words.Select(word => word + lineEnd));
    }

    /// <summary>A file in millimetres with these entities.</summary>
    internal static string Of(params string[] entities) =>
        Groups(
            $"0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC 0 SECTION 2 ENTITIES {string.Join(' ', entities)} 0 ENDSEC 0 EOF"
        );

    /// <summary>A file in millimetres with these blocks and entities.</summary>
    internal static string WithBlocks(string blocks, params string[] entities) =>
        Groups(
            "0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC"
                + $" 0 SECTION 2 BLOCKS {blocks} 0 ENDSEC"
                + $" 0 SECTION 2 ENTITIES {string.Join(' ', entities)} 0 ENDSEC 0 EOF"
        );

    internal static string Line(double x, double y, double toX, double toY, string layer = "0") =>
        FormattableString.Invariant($"0 LINE 8 {layer} 10 {x:R} 20 {y:R} 11 {toX:R} 21 {toY:R}");

    internal static ImportedDrawing Import(string text, ImportSettings? settings = null) =>
        Import(Encoding.UTF8.GetBytes(text), settings);

    internal static ImportedDrawing Import(byte[] bytes, ImportSettings? settings = null)
    {
        using var stream = new MemoryStream(bytes);
        return PatternGen.Import.Drawing(stream, FileFormat.Dxf, settings);
    }

    /// <summary>A drawing of tests/data without the sections that are not read, so that damage does not fall on them.</summary>
    internal static byte[] SectionsRead(string name)
    {
        var text = File.ReadAllText(Repository.File("tests", "data", "dxf", $"{name}.dxf"));
        var start = text.IndexOf("BLOCKS", StringComparison.Ordinal);
        var end = text.IndexOf("OBJECTS", StringComparison.Ordinal);
        var section = text.LastIndexOf("ENDSEC", end, StringComparison.Ordinal);
        return Encoding.UTF8.GetBytes($"0\nSECTION\n2\n{text[start..section]}ENDSEC\n0\nEOF\n");
    }
}
