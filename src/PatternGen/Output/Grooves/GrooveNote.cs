using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The note in a file of groove paths, below all that is drawn: there is more to say than fits on the wood.</summary>
internal static class GrooveNote
{
    private const double Height = 3;

    /// <summary>From one base line to the next, in mm.</summary>
    private const double Line = 6;

    /// <summary>Distance in mm from the drawing.</summary>
    private const double Gap = 8;

    /// <summary>Lines are as long as the drawing, but no shorter and no longer than this, in mm.</summary>
    private const double Shortest = 120;
    private const double Longest = 400;

    internal static IReadOnlyList<Chain> Strokes(
        GroovePaths paths,
        Extents drawn,
        SaveOptions options
    )
    {
        var words = options.Wording;
        var width = Math.Clamp(drawn.Width, Shortest, Longest);
        var lines = paths
            .Notes(words)
            .Prepend(paths.Pattern.TitleWithSize(words))
            .SelectMany(note => TextWrap.Lines(OutputText.Checked(note), Height, width));
        var strokes = lines.SelectMany((line, i) => LabelAt(line, i).Strokes());
        return LineSides.Once([.. strokes], options.Decimals);

        Label LabelAt(string line, int i) =>
            new(line, new(drawn.Min.X, drawn.Min.Y - Gap - i * Line), Height);
    }
}
