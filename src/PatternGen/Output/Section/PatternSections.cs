using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Cuts through carved patterns.</summary>
public static class PatternSections
{
    /// <summary>Returns a cut through the carved board along a line, true size, with its depths.</summary>
    /// <param name="pattern">What is carved.</param>
    /// <param name="from">Where the section starts; it is drawn on the left.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="stock">The wood.</param>
    /// <param name="cutter">What is carved with; it leans the walls.</param>
    /// <remarks>Through the middle of a chip that is a square of side 6, at 65 degrees: two slopes that meet 6.434 mm deep.</remarks>
    /// <exception cref="ArgumentException">Both points are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A point lies beyond 2 km.</exception>
    /// <exception cref="PatternException">The line runs off the wood, or through nothing that is cut, or a chip can't be cut as it should.</exception>
    public static SectionDrawing Section(
        this Pattern pattern,
        Point from,
        Point to,
        Stock stock,
        Cutter cutter
    ) =>
        new(
            Guard.NotNull(pattern),
            new SectionLine(from, to),
            Guard.NotNull(stock),
            Guard.NotNull(cutter)
        );
}
