using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the key of a compass drawing.</summary>
public static class DrawingKeys
{
    /// <summary>Returns the figure with the number of its orbit in each part, so that a person can choose from paper what to carve.</summary>
    /// <remarks>
    /// Numbers are at most 4 mm high and as large as their parts allow. Where one would be under 1.6 mm, too small to read,
    /// its orbit is named once, beside the figure, with a line to one of its parts. Parts that always stay ground have none.
    /// The lines of the figure, and those to the numbers, are layout lines. The numbers are those of <c>CarveOrbits</c>.
    /// </remarks>
    public static Pattern Key(this CompassDrawing drawing)
    {
        Guard.NotNull(drawing);
        return Key(
            drawing,
            [.. Enumerable.Range(1, drawing.OrbitCount).Select(drawing.OrbitParts)],
            words => words.Key(DrawingTitle.Of(drawing, words))
        );
    }

    /// <summary>Returns the figure with the numbers by which the designs of a set are called: the kept orbits, as in the id <c>t6-2-4</c>.</summary>
    /// <inheritdoc cref="Key(CompassDrawing)"/>
    public static Pattern Key(this DesignSet designs)
    {
        var drawing = Guard.NotNull(designs).Drawing;
        return Key(
            drawing,
            designs.KeptOrbits,
            words => words.KeyOfDesigns(DrawingTitle.Of(drawing, words))
        );
    }

    private static DrawnPattern Key(
        CompassDrawing drawing,
        IReadOnlyList<IReadOnlyList<DrawingPart>> orbits,
        Func<Wording, string> title
    )
    {
        var key = new KeyDrawing(drawing, orbits);
        var root = new MotifNode { LayoutLines = [.. key.Lines], Labels = [.. key.Labels] };
        return new DrawnPattern(root, null, words => [title(words)]);
    }
}
