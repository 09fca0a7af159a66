using System.Text;

namespace PatternGen;

/// <summary>The layers of a DXF: a name, a colour number and a place in the order of work for each purpose.</summary>
internal static class DxfLayers
{
    /// <summary>Of a pattern, in the order in which a machine should work: marking before cutting, inside before outside.</summary>
    /// <remarks>Few patterns have a grid, and a layer that is always empty would be a question to each reader.</remarks>
    internal static IReadOnlyList<Layer> Of(Pattern pattern) =>
        pattern.Root.Layers.HasFlag(LayerSet.Grid) ? [Layer.Grid, .. WithoutGrid] : WithoutGrid;

    private static IReadOnlyList<Layer> WithoutGrid { get; } =
    [Layer.Note, Layer.Labels, Layer.LayoutLines, Layer.LineCuts, Layer.Chips, Layer.Stock];

    /// <summary>The same for a file of groove paths.</summary>
    internal static IReadOnlyList<Layer> OfGrooves { get; } =
    [Layer.Note, Layer.Grooves, Layer.Stock];

    /// <summary>Upper-case ASCII of at most 31 characters, which release 12 asks for.</summary>
    internal static string NameOf(Layer layer) =>
        layer switch
        {
            Layer.Stock => "STOCK",
            Layer.LayoutLines => "LAYOUT_LINES",
            Layer.LineCuts => "LINE_CUTS",
            Layer.Chips => "CHIPS",
            Layer.Labels => "LABELS",
            Layer.Grooves => "GROOVES",
            Layer.Grid => "GRID",
            _ => "NOTE",
        };

    /// <summary>Colour number, 1 to 255; entities take it from their layer.</summary>
    internal static int ColourOf(Layer layer) =>
        layer switch
        {
            Layer.Stock => 7,
            Layer.LayoutLines => 150,
            Layer.LineCuts => 40,
            Layer.Chips => 22,
            Layer.Labels => 94,
            Layer.Grooves => 12,
            Layer.Grid => 9,
            _ => 8,
        };

    /// <summary>Returns bytes made of each layer's name, to be found by the layer's number.</summary>
    internal static byte[][] Bytes(Func<string, string> text) =>
        [.. Enum.GetValues<Layer>().Select(layer => Encoding.ASCII.GetBytes(text(NameOf(layer))))];
}
