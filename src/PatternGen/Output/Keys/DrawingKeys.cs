using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the key of a compass drawing.</summary>
public static class DrawingKeys
{
    /// <summary>Returns the figure with the number of its orbit in each part, so that a person can choose from paper what to carve.</summary>
    /// <remarks>
    /// Numbers are at most 4 mm high and as large as their parts allow. Where one would be under 1.6 mm, too small to read,
    /// its orbit is named once, beside the figure, with a line to one of its parts. Parts that always stay ground have none.
    /// The lines of the figure, and those to the numbers, are layout lines.
    /// </remarks>
    public static Pattern Key(this CompassDrawing drawing)
    {
        Guard.NotNull(drawing);
        var key = new KeyDrawing(drawing);
        var root = new MotifNode { LayoutLines = [.. key.Lines], Labels = [.. key.Labels] };
        return new DrawnPattern(root, null, words => [words.Key(DrawingTitle.Of(drawing, words))]);
    }
}
