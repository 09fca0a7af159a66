namespace PatternGen.Geometry;

/// <summary>A grid of points, square or rectangular, from an origin and turned: to snap points and whole contours to.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed partial class Grid
{
    /// <summary>Finer grids than this would not be told apart at the far end of a large drawing.</summary>
    private const double FinestStep = 1e-6;

    private readonly double _cos;
    private readonly double _sin;

    private Grid(double stepX, double stepY, Point origin, Angle turn)
    {
        StepX = Guard.Within(stepX, FinestStep, Guard.MaxSize);
        StepY = Guard.Within(stepY, FinestStep, Guard.MaxSize);
        Origin = Guard.Place(origin);
        Turn = turn;
        (_cos, _sin) = (turn.Cos(), turn.Sin());
    }

    /// <summary>Distance in mm between neighbouring points along the grid's own x axis.</summary>
    public double StepX { get; }

    /// <summary>Distance in mm between neighbouring points along the grid's own y axis.</summary>
    public double StepY { get; }

    /// <summary>One of the grid's points.</summary>
    public Point Origin { get; }

    /// <summary>Direction of the grid's own x axis.</summary>
    public Angle Turn { get; }

    /// <summary>Returns a square grid.</summary>
    /// <param name="step">Distance between neighbouring points in mm, from 1e-6.</param>
    /// <param name="origin">One of the grid's points; (0, 0) by default.</param>
    /// <param name="turn">Direction of the grid's own x axis; level by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is too small, too large or not finite.</exception>
    public static Grid Square(double step, Point origin = default, Angle turn = default)
    {
        Guard.Within(step, FinestStep, Guard.MaxSize);
        return new(step, step, origin, turn);
    }

    /// <summary>Returns a grid with different steps along its two axes.</summary>
    /// <param name="stepX">Distance along the grid's own x axis in mm, from 1e-6.</param>
    /// <param name="stepY">Distance along the grid's own y axis in mm, from 1e-6.</param>
    /// <param name="origin">One of the grid's points; (0, 0) by default.</param>
    /// <param name="turn">Direction of the grid's own x axis; level by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">A step is too small, too large or not finite.</exception>
    public static Grid Rectangular(
        double stepX,
        double stepY,
        Point origin = default,
        Angle turn = default
    ) => new(stepX, stepY, origin, turn);

    /// <summary>Returns the nearest point of the grid; half-way, the one farther from the origin.</summary>
    /// <returns>On a square grid of 2 mm, (2.9, -1.2) gives (2, -2).</returns>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate lies beyond 2 km or is not finite.</exception>
    public Point Snap(Point point)
    {
        var along = Along(Guard.Place(point) - Origin);
        // The place is computed from the whole numbers alone, so that snapping again gives the same digits.
        return Place(new(Whole(along.X / StepX) * StepX, Whole(along.Y / StepY) * StepY));
    }

    /// <summary>Returns the contour with its corners on the grid and the bulges of its arcs kept.</summary>
    /// <returns>As for several contours.</returns>
    public SnapResult Snap(Contour contour) => Snap([Guard.NotNull(contour)]);

    /// <summary>Returns the contours with their corners on the grid and the bulges of their arcs kept.</summary>
    /// <param name="contours">Corners that they share stay shared.</param>
    /// <returns>
    /// The contours in the same order, the largest move, and the contours that would have collapsed; those are left as
    /// they were, and so are the corners that others share with them. Snapping the result again changes nothing.
    /// </returns>
    /// <exception cref="ArgumentNullException">There is no list, or an entry is null.</exception>
    public SnapResult Snap(IEnumerable<Contour> contours) => GridSnapper.Snap(this, contours);

    private static double Whole(double steps) => Math.Round(steps, MidpointRounding.AwayFromZero);
}
