namespace PatternGen;

/// <summary>Writes a pattern as DXF: centre lines in millimetres, a layer for each purpose.</summary>
internal static class DxfWriter
{
    internal static void Write(Pattern pattern, OutputBuffer output, SaveOptions options)
    {
        if (options.DxfVersion == DxfVersion.R12)
            WriteR12(pattern, output, options);
        else
            WriteR2000(pattern, output, options);
    }

    private static void WriteR12(Pattern pattern, OutputBuffer output, SaveOptions options)
    {
        var file = new R12File(output, options.Decimals, DxfLayers.Of(pattern));
        var shapes = new DxfShapes(file.Drawing, options.Decimals);
        var content = new DxfContent(pattern, options, RepeatedShapes.None);
        Write(file, shapes, pattern, content, new ChipSink(shapes));
    }

    private static void WriteR2000(Pattern pattern, OutputBuffer output, SaveOptions options)
    {
        var repeated =
            options.SharedSides == SharedSides.Closed
                ? RepeatedShapes.Of(pattern, options)
                : RepeatedShapes.None;
        var file = new R2000File(output, options.Decimals, DxfLayers.Of(pattern), repeated.Shapes);
        var shapes = new DxfShapes(file.Drawing, options.Decimals);
        var content = new DxfContent(pattern, options, repeated);
        Write(file, shapes, pattern, content, new CopySink(file, shapes, repeated));
    }

    private static void Write(
        IDxfFile file,
        DxfShapes shapes,
        Pattern pattern,
        DxfContent content,
        IPatternSink chips
    )
    {
        file.Begin(content.Extents, content.EntityCount);
        foreach (var layer in DxfLayers.Of(pattern))
            Draw(layer);
        file.End();

        void Draw(Layer layer)
        {
            foreach (var chain in content.LinesOn(layer))
                shapes.Run(layer, chain);
            if (layer == Layer.Chips && content.DrawsClosedChips)
                pattern.Root.Draw(chips, LayerSet.Chips);
            if (layer == Layer.Stock)
                foreach (var outline in content.Stock)
                    shapes.Ring(layer, outline.Span);
        }
    }

    /// <summary>Draws the chips, as they come out of the tree.</summary>
    private sealed class ChipSink(DxfShapes shapes) : SelectiveSink
    {
        public override void Chip(in PlacedChip chip) => shapes.Chip(chip);
    }

    /// <summary>Draws the chips, those that are repeated as copies of their shapes.</summary>
    private sealed class CopySink(R2000File file, DxfShapes shapes, RepeatedShapes repeated)
        : SelectiveSink
    {
        public override void Chip(in PlacedChip chip)
        {
            if (repeated.CopyOf(chip) is { } copy)
                file.Insert(Layer.Chips, copy);
            else
                shapes.Chip(chip);
        }
    }
}
