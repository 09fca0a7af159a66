using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Whole patterns on the carver's ruled grid.</summary>
public static class GridLayout
{
    /// <summary>Returns the pattern with every corner of its chips, line cuts and layout lines moved to the nearest point of a grid.</summary>
    /// <remarks>
    /// Arcs keep their bulge, so their radii change with their chords. Corners that pieces share stay shared. A piece that
    /// would collapse, cross itself or turn inside out is left as it was, and told in <see cref="SnappedPattern.LeftAlone"/>.
    /// The outline of the wood is measured and stays; so do labels. Each chip becomes a shape of its own.
    /// </remarks>
    /// <param name="pattern">The pattern.</param>
    /// <param name="grid">The grid: <c>border.SnapTo(Grid.Square(0.5))</c> moves no corner by more than 0.354 mm.</param>
    [Pure]
    public static SnappedPattern SnapTo(this Pattern pattern, Grid grid) =>
        new(Guard.NotNull(pattern), Guard.NotNull(grid));

    /// <inheritdoc cref="SnapTo(Pattern, Grid)"/>
    [Pure]
    public static SnappedPattern SnapTo(this Pattern pattern, PolarGrid grid) =>
        new(Guard.NotNull(pattern), Guard.NotNull(grid));

    /// <summary>Returns the pattern with the lines of a grid on a layer of their own, printed and never cut.</summary>
    /// <remarks>The lines reach over the outline of the wood, or over all that is drawn where there is none.</remarks>
    /// <param name="pattern">The pattern.</param>
    /// <param name="grid">The grid.</param>
    /// <exception cref="PatternException">More than 4,000 lines would be drawn.</exception>
    [Pure]
    public static Pattern WithGrid(this Pattern pattern, Grid grid) =>
        WithLines(Guard.NotNull(pattern), Guard.NotNull(grid));

    /// <summary>Returns the pattern with the rings and rays of a grid on a layer of their own, printed and never cut.</summary>
    /// <remarks><inheritdoc cref="WithGrid(Pattern, Grid)" path="/remarks"/></remarks>
    /// <param name="pattern">The pattern.</param>
    /// <param name="grid">The grid.</param>
    /// <exception cref="PatternException">More than 4,000 lines would be drawn.</exception>
    [Pure]
    public static Pattern WithGrid(this Pattern pattern, PolarGrid grid) =>
        WithLines(Guard.NotNull(pattern), Guard.NotNull(grid));

    private static Pattern WithLines(Pattern pattern, ISnapGrid grid)
    {
        var room = pattern.Bounds(LayerSet.Stock) ?? pattern.Extents;
        return room is { } reach
            ? pattern.With(Pattern.OfGrid(GridLines.Within(grid, reach)))
            : pattern;
    }
}
