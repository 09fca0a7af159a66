namespace PatternGen;

/// <summary>Writes a pattern as SVG.</summary>
internal static class SvgWriter
{
    /// <param name="pattern">Something that is drawn, not empty.</param>
    /// <param name="output">Where the file goes.</param>
    /// <param name="purpose">What it is wanted for.</param>
    /// <param name="options">How it is written.</param>
    internal static void Write(
        Pattern pattern,
        OutputBuffer output,
        For purpose,
        SaveOptions options
    )
    {
        var drawing = Drawing(pattern, purpose, options);
        var file = new SvgFile(output, drawing.Sheet, options.Decimals);
        file.Start(
            pattern.Title(options.Wording),
            string.Join("; ", pattern.Caption(options.Wording))
        );
        drawing.Draw(file, new SvgLayers(pattern, file, options));
        file.Finish();
    }

    private static ISvgDrawing Drawing(Pattern pattern, For purpose, SaveOptions options)
    {
        var reach = DrawingSurvey.Of(pattern, LayerSet.Drawn) ?? default;
        return purpose switch
        {
            For.Paper => new PaperDrawing(pattern, reach, options.Wording),
            For.Machine => new MachineDrawing(pattern, reach, options.Wording),
            _ => new ViewingDrawing(pattern, reach),
        };
    }
}

/// <summary>What one purpose puts on a sheet.</summary>
internal interface ISvgDrawing
{
    /// <summary>All that is seen.</summary>
    SvgSheet Sheet { get; }

    void Draw(SvgFile file, SvgLayers layers);
}
