namespace PatternGen;

/// <summary>Draws a pattern's layers, each into a group of its own. A layer with nothing on it has no group.</summary>
internal sealed class SvgLayers(Pattern pattern, SvgFile file, SaveOptions options)
{
    /// <summary>Draws a layer's runs, each an element of its own.</summary>
    internal void Runs(Layer layer, SvgStyle style) =>
        Group(layer, style, new SvgRunSink(file.Paths));

    /// <summary>Draws grooves as wide as they are cut.</summary>
    internal void Grooves(SvgStyle style) =>
        Group(Layer.LineCuts, style, new SvgGrooveSink(file.Paths));

    internal void Labels(SvgStyle style) => Group(Layer.Labels, style, new SvgLabelSink(file));

    /// <summary>Draws the outlines of the wood as one area, with what they leave out.</summary>
    internal void StockArea(SvgStyle style)
    {
        if (!Has(Layer.Stock))
            return;
        Start(Layer.Stock, style);
        file.Paths.Begin(" fill-rule=\"evenodd\""u8);
        pattern.Root.Draw(new SvgAreaSink(file.Paths), LayerSet.Stock);
        file.Paths.End();
        file.EndGroup();
    }

    /// <summary>Draws the sides of the chips as the options ask: closed chips, or each side once.</summary>
    internal void Sides(SvgStyle style)
    {
        if (options.SharedSides == SharedSides.Closed)
            Runs(Layer.Chips, style);
        else if (Has(Layer.Chips))
            SidesOnce(style with { Fill = SvgStyle.None });
    }

    /// <summary>Draws the walls of chips that get some light.</summary>
    /// <param name="light">How much.</param>
    /// <param name="colour">The colour that it gives them.</param>
    /// <param name="edge">Width in mm along the sides that is left free.</param>
    internal void Walls(WallLight light, string colour, double edge)
    {
        if (!Has(Layer.Chips))
            return;
        file.StartGroup(
            $"walls-in-{light.ToString().ToLowerInvariant()}-light",
            null,
            SvgStyle.Area(colour)
        );
        pattern.Root.Draw(new SvgWallSink(file.Paths, light, edge), LayerSet.Chips);
        file.EndGroup();
    }

    private void SidesOnce(SvgStyle style)
    {
        Start(Layer.Chips, style);
        foreach (var run in ChipSides.Chains(pattern, options.Decimals))
            file.Paths.Open(run.Span);
        file.EndGroup();
    }

    private void Group(Layer layer, SvgStyle style, IPatternSink sink)
    {
        if (!Has(layer))
            return;
        Start(layer, style);
        pattern.Root.Draw(sink, SetOf(layer));
        file.EndGroup();
    }

    private bool Has(Layer layer) => (pattern.Root.Layers & SetOf(layer)) != 0;

    private void Start(Layer layer, SvgStyle style) =>
        file.StartGroup(SvgNames.Of(layer), options.Wording.LayerTitle(layer), style);

    private static LayerSet SetOf(Layer layer) => (LayerSet)(1 << (int)layer);
}
