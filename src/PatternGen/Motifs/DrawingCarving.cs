using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Ways to choose the parts of a compass drawing that are carved.</summary>
public static class DrawingCarving
{
    /// <summary>Returns the drawing with every part carved that answers to a description.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="which">
    /// Says of each part whether it is carved: <c>drawing.Carve(part => part.IsPetal)</c>. Parts that always stay ground are
    /// not asked.
    /// </param>
    /// <exception cref="PatternException">No part answers to it; the message says what parts there are.</exception>
    public static CarvedDrawing Carve(this CompassDrawing drawing, Func<DrawingPart, bool> which)
    {
        Guard.NotNull(which);
        DrawingPart[] parts = [.. PartChoice.Carvable(Guard.NotNull(drawing)).Where(which)];
        return parts.Length > 0 ? new(drawing, parts) : throw PartChoice.NothingChosen(drawing);
    }

    /// <summary>Returns the drawing with a design carved.</summary>
    /// <exception cref="ArgumentException">It is the default value, which belongs to no set.</exception>
    public static CarvedDrawing Carve(this Design design) =>
        design == default
            ? throw new ArgumentException(
                "The default value is no design; take one from CompassDrawing.AllDesigns.",
                nameof(design)
            )
            : new(design.Drawing, design.Parts);

    /// <inheritdoc cref="CarveOrbits(CompassDrawing, IEnumerable{int})"/>
    public static CarvedDrawing CarveOrbits(this CompassDrawing drawing, params int[] orbits) =>
        drawing.CarveOrbits((IEnumerable<int>)orbits);

    /// <summary>Returns the drawing with whole orbits carved.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="orbits">Their numbers, as the key drawing shows them: <c>drawing.CarveOrbits(1, 3)</c>. At least one.</param>
    /// <exception cref="ArgumentException">There are none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such orbit.</exception>
    /// <exception cref="PatternException">An orbit always stays ground, or the lines of the figure bound no part.</exception>
    public static CarvedDrawing CarveOrbits(this CompassDrawing drawing, IEnumerable<int> orbits)
    {
        Guard.NotNull(drawing);
        DrawingPart[] parts =
        [
            .. Guard
                .NotNull(orbits)
                .SelectMany(orbit => PartChoice.OfOrbit(drawing, orbit, nameof(orbits))),
        ];
        return new(drawing, PartChoice.Chosen(drawing, parts, nameof(orbits)));
    }

    /// <inheritdoc cref="CarveAt(CompassDrawing, IEnumerable{Point})"/>
    public static CarvedDrawing CarveAt(this CompassDrawing drawing, params Point[] points) =>
        drawing.CarveAt((IEnumerable<Point>)points);

    /// <summary>Returns the drawing with the parts carved that points lie in.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="points">A point inside each part, off its sides; at least one.</param>
    /// <exception cref="ArgumentException">There are none.</exception>
    /// <exception cref="PatternException">A point lies on a line, outside the figure, or in a part that always stays ground, or the lines of the figure bound no part.</exception>
    public static CarvedDrawing CarveAt(this CompassDrawing drawing, IEnumerable<Point> points)
    {
        Guard.NotNull(drawing);
        DrawingPart[] parts =
        [
            .. Guard.NotNull(points).Select(point => PartChoice.PartAt(drawing, point)),
        ];
        return new(drawing, PartChoice.Chosen(drawing, parts, nameof(points)));
    }
}
