namespace PatternGen;

/// <summary>The names of groups in a file; they stay the same in every language.</summary>
internal static class SvgNames
{
    internal static string Of(Layer layer) =>
        layer switch
        {
            Layer.Stock => "stock",
            Layer.LayoutLines => "layout-lines",
            Layer.LineCuts => "line-cuts",
            Layer.Chips => "chips",
            Layer.Labels => "labels",
            Layer.Grooves => "grooves",
            Layer.Grid => "grid",
            _ => "note",
        };
}
