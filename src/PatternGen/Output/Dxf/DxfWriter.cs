namespace PatternGen;

/// <summary>Writes a pattern as DXF: centre lines in millimetres, a layer for each purpose.</summary>
internal static class DxfWriter
{
    internal static void Write(Pattern pattern, OutputBuffer output, SaveOptions options)
    {
        var content = new DxfContent(pattern, options);
        IDxfFile file =
            options.DxfVersion == DxfVersion.R12
                ? new R12File(output, options.Decimals)
                : new R2000File(output, options.Decimals);
        var shapes = new DxfShapes(file, options.Decimals);
        file.Begin(content.Extents, content.EntityCount);
        foreach (var layer in DxfLayers.InOrder)
            Draw(layer);
        file.End();

        void Draw(Layer layer)
        {
            foreach (var chain in content.LinesOn(layer))
                shapes.Run(layer, chain);
            if (layer == Layer.Chips && content.ClosedChipCount > 0)
                pattern.Root.Draw(new ChipSink(shapes), LayerSet.Chips);
            if (layer == Layer.Stock)
                foreach (var outline in content.Stock)
                    shapes.Ring(layer, outline.Span);
        }
    }

    /// <summary>Draws the chips, as they come out of the tree.</summary>
    private sealed class ChipSink(DxfShapes shapes) : SelectiveSink
    {
        public override void Chip(in PlacedChip chip) => shapes.Ring(Layer.Chips, chip.Outline);
    }
}
