using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a pattern's layers, each into a group of its own. A layer with nothing on it has no group.</summary>
internal sealed class SvgLayers(Pattern pattern, SvgFile file, SaveOptions options)
{
    /// <summary>Draws a layer's runs, each an element of its own.</summary>
    internal void Runs(Layer layer, SvgStyle style) =>
        Group(layer, style, new SvgRunSink(file.Paths));

    /// <summary>Draws grooves as wide as they are cut.</summary>
    internal void Grooves(SvgStyle style) =>
        Group(Layer.LineCuts, style, new SvgGrooveSink(file.Paths, style.Stroke));

    /// <summary>Draws the line at the bottom of each groove.</summary>
    internal void Valleys(SvgStyle style)
    {
        if (!Has(Layer.LineCuts))
            return;
        file.StartGroup("valleys", null, style);
        pattern.Root.Draw(new SvgRunSink(file.Paths), LayerSet.LineCuts);
        file.EndGroup();
    }

    internal void Labels(SvgStyle style) => Group(Layer.Labels, style, new SvgLabelSink(file));

    /// <summary>Draws the outlines of the wood as one area, with what they leave out.</summary>
    internal void StockArea(SvgStyle style)
    {
        if (!Has(Layer.Stock))
            return;
        Start(Layer.Stock, style);
        // Filled by direction, so that an outline that two patterns share does not cancel itself.
        file.Paths.Begin();
        pattern.Root.Draw(new SvgAreaSink(file.Paths), LayerSet.Stock);
        file.Paths.End();
        file.EndGroup();
    }

    /// <summary>Draws closed chips, those that are repeated as the options ask.</summary>
    internal void Chips(SvgStyle style)
    {
        if (!Has(Layer.Chips))
            return;
        var repeated = RepeatedShapes.Of(pattern, options);
        Start(Layer.Chips, style);
        if (repeated.Shapes.Count > 0)
            file.Copies.Define(repeated.Shapes);
        pattern.Root.Draw(new SvgChipSink(file, repeated), LayerSet.Chips);
        file.EndGroup();
    }

    /// <summary>Draws the sides of the chips as the options ask: closed chips, or each side once.</summary>
    internal void Sides(SvgStyle style)
    {
        if (options.SharedSides == SharedSides.Closed)
            Chips(style);
        else
            Draw(
                Layer.Chips,
                ChipSides.Chains(pattern, options.Decimals),
                style with
                {
                    Fill = SvgStyle.None,
                }
            );
    }

    /// <summary>Draws a layer's lines, each stretch of them once, so that a machine goes over it once.</summary>
    internal void Once(Layer layer, IReadOnlyList<Chain> lines, SvgStyle style) =>
        Draw(layer, LineSides.Once(lines, options.Decimals), style);

    /// <summary>Draws a layer's outlines, each once.</summary>
    internal void Once(Layer layer, IReadOnlyList<Contour> outlines, SvgStyle style) =>
        Draw(layer, LineSides.Once(outlines, options.Decimals), style);

    /// <summary>Draws the walls of the chips in the light.</summary>
    /// <param name="edge">Width in mm along the sides that is left free.</param>
    internal void Walls(double edge)
    {
        if (!Has(Layer.Chips))
            return;
        file.StartGroup("walls", null, SvgStyle.Area(SvgStyle.None));
        pattern.Root.Draw(new SvgWallSink(file, edge), LayerSet.Chips);
        file.EndGroup();
    }

    private void Draw(Layer layer, IReadOnlyList<SegmentRun> runs, SvgStyle style)
    {
        if (runs.Count == 0)
            return;
        Start(layer, style);
        foreach (var run in runs)
            if (run.IsClosed)
                file.Paths.Closed(run.Span);
            else
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
