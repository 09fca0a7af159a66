using System.Globalization;

namespace PatternGen.Geometry;

/// <summary>A grid of rings about a centre and rays from it, as rosettes are laid out on: to snap points and whole contours to.</summary>
/// <remarks>
/// Its points are the centre and where rays cross rings. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class PolarGrid
{
    /// <summary>Finer grids than this would not be told apart at the far end of a large drawing.</summary>
    private const double FinestStep = 1e-6;

    /// <summary>Rays a tenth of a degree apart; of more, none could be told from the next.</summary>
    private const int MostRays = 3600;

    private PolarGrid(double ringStep, int rays, Point centre, Angle firstRay)
    {
        RingStep = Guard.Within(ringStep, FinestStep, Guard.MaxSize);
        Rays = Guard.Within(rays, 1, MostRays);
        Centre = Guard.Place(centre);
        FirstRay = firstRay;
    }

    /// <summary>Distance in mm from one ring to the next, and from the centre to the first.</summary>
    public double RingStep { get; }

    /// <summary>Number of rays, evenly spread: 12 rays are 30 degrees apart.</summary>
    public int Rays { get; }

    /// <summary>The middle of all rings.</summary>
    public Point Centre { get; }

    /// <summary>Direction of one of the rays.</summary>
    public Angle FirstRay { get; }

    /// <summary>Returns a grid of rings and rays.</summary>
    /// <param name="ringStep">Distance in mm from one ring to the next, from 1e-6.</param>
    /// <param name="rays">Number of rays, 1 to 3600.</param>
    /// <param name="centre">The middle of all rings; (0, 0) by default.</param>
    /// <param name="firstRay">Direction of one of the rays in degrees; 90, straight up as rosettes begin, by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range or not finite.</exception>
    public static PolarGrid Of(
        double ringStep,
        int rays,
        Point centre = default,
        double firstRay = 90
    ) => new(ringStep, rays, centre, Angle.FromDegrees(firstRay));

    /// <summary>Returns the nearest point of the grid; half-way, the one farther out or farther counter-clockwise.</summary>
    /// <returns>With rings 5 mm apart and 4 rays, (11, 1) gives (10, 0).</returns>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate lies beyond 2 km or is not finite.</exception>
    public Point Snap(Point point)
    {
        var offset = Guard.Place(point) - Centre;
        if (offset.LengthSquared == 0)
            return Centre;
        var turns = (offset.Direction - FirstRay).Radians / Math.Tau * Rays;
        var ray = Math.Round(turns, MidpointRounding.AwayFromZero);
        // On the nearest ray, the nearest point is the foot of the perpendicular.
        var foot = offset.Length * Math.Cos((turns - ray) / Rays * Math.Tau);
        var ring = Math.Round(foot / RingStep, MidpointRounding.AwayFromZero);
        return ring > 0 ? At(ring * RingStep, ray) : Centre;
    }

    /// <summary>Returns the contour with its corners on the grid and the bulges of its arcs kept.</summary>
    /// <returns>As for several contours.</returns>
    public SnapResult Snap(Contour contour) => Snap([Guard.NotNull(contour)]);

    /// <inheritdoc cref="Grid.Snap(IEnumerable{Contour})"/>
    public SnapResult Snap(IEnumerable<Contour> contours) => GridSnapper.Snap(this, contours);

    /// <summary>Returns the step, the rays and the centre, for messages.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"rings {RingStep:0.######} mm apart and {Rays} rays about {Centre}"
        );

    /// <summary>A place on a ray, from whole numbers alone, so that snapping again gives the same digits.</summary>
    private Point At(double radius, double ray)
    {
        // One number for each ray, however often one has gone round.
        var number = ray - Math.Floor(ray / Rays) * Rays;
        return Centre.Polar(radius, FirstRay + Angle.OfTurn(number / Rays));
    }
}
