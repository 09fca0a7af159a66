using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A drawing made as a person makes it, with compass, straightedge and pencil, step by step.</summary>
/// <remarks>
/// The drawing holds its figure, the guide lines that led to it, and the steps, so that it can be drawn again by hand on
/// the wood. Immutable and safe to share between threads.
/// </remarks>
public partial class CompassDrawing
{
    private readonly CompassStep[] _instructions;
    private readonly Curve[] _curves;
    private readonly Curve[] _guides;

    /// <summary>Runs the lambda that draws; the pencil is of no use after it.</summary>
    private protected CompassDrawing(Action<Pencil> draw)
    {
        Guard.NotNull(draw);
        var pencil = new Pencil();
        try
        {
            draw(pencil);
        }
        finally
        {
            pencil.Drawing.LayDown();
        }
        _instructions = [.. pencil.Drawing.Steps];
        var distinct = new DistinctCurves(pencil.Drawing.Steps.SelectMany(step => step.Drawn));
        _curves = distinct.Drawn;
        _guides = distinct.Guides;
        if (_curves.Length == 0)
            throw new ArgumentException(
                "The drawing has no line of its own, only guide lines or none; draw at least one circle, arc or line.",
                nameof(draw)
            );
        Extents = ExtentsOf(_curves);
        PetalMarks = [.. pencil.Drawing.PetalMarks];
        PlainMarks = [.. pencil.Drawing.PlainMarks];
    }

    /// <summary>The steps, in order; none for a figure from a file, which does not say how to draw it.</summary>
    public IReadOnlyList<CompassStep> Instructions => _instructions;

    /// <summary>The lines of the figure, each once, in the order drawn; guide lines are not among them.</summary>
    public IReadOnlyList<Curve> Curves => _curves;

    /// <summary>The guide lines, each once, in the order drawn.</summary>
    public IReadOnlyList<Curve> Guides => _guides;

    /// <summary>The smallest upright rectangle that holds the figure.</summary>
    public Extents Extents { get; }

    /// <summary>A point inside each petal of the figure.</summary>
    internal IReadOnlyList<Point> PetalMarks { get; }

    /// <summary>A point inside each part of the figure that always stays ground.</summary>
    internal IReadOnlyList<Point> PlainMarks { get; }

    /// <summary>Returns the drawing that the given steps make.</summary>
    /// <param name="draw">Draws with a pencil, which works only until the lambda returns.</param>
    /// <returns>
    /// <c>CompassDrawing.Of(pencil =&gt; { var a = pencil.Mark(0, 0); pencil.SetRadius(40); pencil.Circle(a); })</c> is a
    /// circle in three steps.
    /// </returns>
    /// <exception cref="ArgumentException">No line of the figure is drawn.</exception>
    public static CompassDrawing Of(Action<Pencil> draw) => new(draw);

    private static Extents ExtentsOf(Curve[] curves) =>
        curves
            .Select(curve => curve.Extents)
            .Aggregate((together, next) => together.Including(next));
}
