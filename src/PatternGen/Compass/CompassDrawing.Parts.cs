using PatternGen.Geometry;

namespace PatternGen;

public partial class CompassDrawing
{
    // Worked out when first asked for.
    private volatile DrawingFigure? _figure;

    /// <summary>The lines of the figure as nodes, edges and faces.</summary>
    public Arrangement Arrangement => Figure.Arrangement;

    /// <summary>The turns and mirrors that bring the figure onto itself, detected from its lines.</summary>
    public FigureSymmetry Symmetry => Figure.Symmetry;

    /// <summary>
    /// Every area that the lines bound, in the order of their numbers. A circle and six equal ones round points of it, each
    /// through the centre, have 24 parts in 4 orbits; what lies beyond the outermost lines is none.
    /// </summary>
    public IReadOnlyList<DrawingPart> Parts => Figure.Parts;

    /// <summary>Number of orbits: of sorts of parts that the figure's symmetry does not tell apart.</summary>
    public int OrbitCount => Figure.Orbits.Length;

    // One figure only, however many threads ask at once: parts are told apart by reference.
    internal DrawingFigure Figure =>
        _figure ?? Interlocked.CompareExchange(ref _figure, new(this), null) ?? _figure;

    /// <summary>Returns the part that a point lies in; null if it lies on a line or outside.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or beyond 2 km.</exception>
    public DrawingPart? PartAt(Point point) => Figure.PartAt(point);

    /// <summary>Returns the parts of an orbit, counter-clockwise.</summary>
    /// <param name="orbit">Number of the orbit, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such orbit.</exception>
    public IReadOnlyList<DrawingPart> OrbitParts(int orbit)
    {
        Guard.Within(orbit, 1, OrbitCount);
        return [.. Figure.Orbits[orbit - 1].Select(part => Parts[part])];
    }
}
