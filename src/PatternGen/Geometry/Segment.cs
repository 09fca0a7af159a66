using System.Globalization;

namespace PatternGen.Geometry;

/// <summary>A straight line or a circular arc from one point to another: the one curve of the kernel.</summary>
/// <remarks>
/// An arc is given by its bulge, tan(sweep / 4): positive is counter-clockwise, 1 is a half circle. Any bulge up
/// to 1e9 whose arc stays within 2 km is accepted here; contours and chains store arcs of at most a half circle. All measures are exact in closed form, and
/// none goes through the arc's centre, so that arcs as flat as a line keep their digits.
/// Immutable and safe to share between threads. Equality is exact. The default value is the empty line at the origin.
/// </remarks>
public readonly partial record struct Segment
{
    /// <summary>Creates a segment.</summary>
    /// <param name="start">Where it starts, in mm.</param>
    /// <param name="end">Where it ends, in mm.</param>
    /// <param name="bulge">tan(sweep / 4); 0, the default, is a straight line.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate or the arc lies beyond 2 km, or a number is not finite.</exception>
    public Segment(Point start, Point end, double bulge = 0)
    {
        Start = Guard.Place(start);
        End = Guard.Place(end);
        Bulge = Guard.Bulge(start, end, bulge, nameof(bulge));
    }

    /// <summary>Where the segment starts.</summary>
    public Point Start { get; }

    /// <summary>Where the segment ends.</summary>
    public Point End { get; }

    /// <summary>tan(sweep / 4): 0 is a line, positive counter-clockwise, ±1 a half circle.</summary>
    public double Bulge { get; }

    /// <summary>Whether this is a straight line.</summary>
    public bool IsLine => Bulge == 0;

    /// <summary>The angle that an arc turns through, positive counter-clockwise; 0 for a line.</summary>
    public Angle Sweep => Angle.FromRadians(4 * Math.Atan(Bulge));

    /// <summary>Radius in mm; infinite for a line. Bulge 0.5 over a chord of 2 has radius 1.25.</summary>
    /// <remarks>R = c (1 + b²) / (4 |b|), from the definition of the bulge.</remarks>
    public double Radius => IsLine ? double.PositiveInfinity : 1 / Math.Abs(Curvature);

    /// <summary>Signed curvature in 1/mm: 1 / radius, positive where the path turns left, 0 for a line.</summary>
    public double Curvature => IsLine ? 0 : 4 * Bulge / (Chord.Length * (1 + Bulge * Bulge));

    /// <summary>Height of the arc over its chord in mm, positive for a positive bulge. Bulge 0.5 over 2 has 0.5.</summary>
    public double Sagitta => Bulge * Chord.Length / 2;

    /// <summary>The vector from start to end.</summary>
    public Vector Chord => End - Start;

    /// <summary>Centre of the circle that an arc lies on.</summary>
    /// <exception cref="InvalidOperationException">A straight line has no centre.</exception>
    public Point Centre =>
        IsLine
            ? throw new InvalidOperationException($"A straight line has no centre: {this}.")
            // (1 - b²) / (4b) chords to the left of the middle of the chord.
            : Start.Towards(End, 0.5) + Chord.Left * ((1 - Bulge * Bulge) / (4 * Bulge));

    /// <summary>The point half-way along.</summary>
    public Point Middle => Start.Towards(End, 0.5) - Chord.Left * (Bulge / 2);

    /// <summary>Returns the arc that rises a given height over its chord.</summary>
    /// <param name="start">Where it starts.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="sagitta">Height in mm; positive bulges to the right of the way from start to end.</param>
    /// <exception cref="ArgumentException">Start and end are the same point.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate or the arc lies beyond 2 km, or a number is not finite.</exception>
    public static Segment WithSagitta(Point start, Point end, double sagitta)
    {
        var chord = Guard.Place(start).DistanceTo(Guard.Place(end));
        if (!(chord > 0))
            throw new ArgumentException(
                $"An arc needs two different ends, but both are {start}.",
                nameof(end)
            );
        var bulge = 2 * Guard.Within(sagitta, -Guard.MaxCoordinate, Guard.MaxCoordinate) / chord;
        return new(start, end, Guard.Bulge(start, end, bulge, nameof(sagitta)));
    }

    /// <summary>Returns an arc of a circle.</summary>
    /// <param name="centre">Centre of the circle.</param>
    /// <param name="radius">Radius in mm.</param>
    /// <param name="from">Direction from the centre to the start.</param>
    /// <param name="sweep">The angle turned through, positive counter-clockwise, less than a whole turn, not 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive, or the sweep is 0 or a whole turn or more.</exception>
    public static Segment Arc(Point centre, double radius, Angle from, Angle sweep)
    {
        Guard.Place(centre);
        Guard.Positive(radius);
        var bulge = Math.Tan(sweep.Radians / 4);
        if (
            sweep.Radians == 0
            || Math.Abs(sweep.Radians) >= Math.Tau
            || Math.Abs(bulge) > Guard.MaxBulge
        )
            throw new ArgumentOutOfRangeException(
                nameof(sweep),
                $"An arc turns through more than 0 and less than 360 degrees, but the sweep is {sweep}; a whole circle is a Circle."
            );
        return new(centre.Polar(radius, from), centre.Polar(radius, from + sweep), bulge);
    }

    /// <summary>Returns the same curve walked the other way.</summary>
    public Segment Reversed() => new(End, Start, -Bulge);

    /// <summary>Returns the segment moved, turned, mirrored or scaled.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The transform takes it beyond 2 km.</exception>
    public Segment Transformed(Transform transform)
    {
        var start = Guard.Moved(transform.Apply(Start), Start, nameof(transform));
        var end = Guard.Moved(transform.Apply(End), End, nameof(transform));
        return new(
            start,
            end,
            Guard.Bulge(start, end, transform.ApplyBulge(Bulge), nameof(transform))
        );
    }

    /// <summary>Returns start, end and bulge, for messages.</summary>
    public override string ToString() =>
        IsLine
            ? $"{Start} to {End}"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{Start} to {End} bulge {Bulge:0.######}"
            );
}
