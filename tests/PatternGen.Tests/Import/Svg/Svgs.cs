using System.Text;

namespace PatternGen.Tests.Importing.Svg;

/// <summary>SVG texts, and drawings read from them.</summary>
internal static class Svgs
{
    /// <summary>A sheet whose units are millimetres.</summary>
    internal static string Sheet(string content, int width = 1000, int height = 1000) =>
        $"""<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}">{content}</svg>""";

    internal static ImportedDrawing Read(string svg, ImportSettings? settings = null) =>
        Read(Encoding.UTF8.GetBytes(svg), settings);

    internal static ImportedDrawing Read(byte[] svg, ImportSettings? settings = null)
    {
        using var file = new MemoryStream(svg);
        return PatternGen.Import.Drawing(file, FileFormat.Svg, settings);
    }

    /// <summary>The curves of a path on a sheet of 1000 mm, with y down again as the path has it.</summary>
    internal static ImportedDrawing Path(string data, ImportSettings? settings = null) =>
        Read(Sheet($"""<path d="{data}"/>"""), settings);

    /// <summary>A place of a sheet of 1000 mm in the drawing.</summary>
    internal static Point At(double x, double y) => new(x, 1000 - y);
}
