using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What the free-form motifs have in common: chips made of sides, and the largest measure that works.</summary>
internal static class FreeFormShape
{
    /// <summary>How far the sides of a stroke may lie off their curve in mm: finer than any knife follows a line.</summary>
    internal const double Accuracy = 0.01;

    /// <summary>Wood left between chips in mm, wide enough where it runs across the grain: common practice, no source.</summary>
    internal const double UsualRidge = 1.2;

    /// <summary>Halvings of the search for the largest measure that works: enough for a part in a million.</summary>
    private const int SearchSteps = 20;

    /// <summary>Returns a leaf of the tree with one row of chips.</summary>
    internal static MotifNode Row(params IEnumerable<Contour> outlines) =>
        new()
        {
            ChipRows =
            [
                [.. outlines.Select(outline => new ChipShape(outline))],
            ],
        };

    /// <summary>Whether an outline runs counter-clockwise round an area and does not cross itself.</summary>
    internal static bool IsSound(Contour outline) =>
        outline.SignedArea > 0 && !outline.CrossesItself();

    /// <summary>Returns the largest share of a measure, of 1 at most, that works; 0 if none does.</summary>
    /// <param name="works">Whether a share works; if one does, so do smaller ones.</param>
    /// <param name="steps">Halvings of the search.</param>
    internal static double LargestShare(Func<double, bool> works, int steps = SearchSteps)
    {
        if (works(1))
            return 1;
        var (low, high) = (0.0, 1.0);
        for (var step = 0; step < steps; step++)
        {
            var middle = (low + high) / 2;
            if (works(middle))
                low = middle;
            else
                high = middle;
        }
        return low;
    }

    /// <summary>A number for an error message, rounded down so that it does work.</summary>
    internal static double Down(double value) => Math.Floor(value * 1e4) / 1e4;
}
