namespace PatternGen.Geometry;

public readonly partial record struct Segment
{
    /// <summary>Bulge under which series replace closed forms that would cancel; the seven terms then keep 1e-16.</summary>
    private const double FlatBulge = 0.1;

    /// <summary>Bulge under which an arc is as long as its chord to the last digit, and 0 / 0 is to be avoided.</summary>
    private const double StraightBulge = 1e-8;

    /// <summary>Length along the curve in mm. A half circle over a chord of 2 has length π.</summary>
    public double Length
    {
        get
        {
            var chord = Chord.Length;
            var b = Math.Abs(Bulge);
            // sweep × radius = c (1 + b²) atan(b) / b.
            return b < StraightBulge ? chord : chord * (1 + b * b) * Math.Atan(b) / b;
        }
    }

    /// <summary>The smallest upright rectangle that holds the curve, bulge included.</summary>
    public Extents Extents
    {
        get
        {
            var extents = Extents.Of(Start).Including(End);
            if (IsLine || Start == End)
                return extents;
            // The four points where the tangent is level or upright, if the sweep reaches them.
            var sweep = 4 * Math.Atan(Bulge);
            var first = Math.Atan2(Chord.Y, Chord.X) - sweep / 2;
            for (var quarter = 0; quarter < 4; quarter++)
            {
                var turn = quarter * (Math.PI / 2) - first;
                turn -= Math.Tau * Math.Floor(turn / Math.Tau);
                if (sweep < 0)
                    turn -= Math.Tau;
                if (Math.Abs(turn) < Math.Abs(sweep))
                    extents = extents.Including(AtTurn(turn, sweep));
            }
            return extents;
        }
    }

    /// <summary>Signed area in mm² between chord and curve: positive for a positive bulge; 0 for a line.</summary>
    /// <remarks>(R²/2)(θ - sin θ), the circular segment, written in the bulge.</remarks>
    internal double SegmentArea
    {
        get
        {
            var square = Chord.LengthSquared;
            var b = Bulge;
            if (Math.Abs(b) < FlatBulge)
                return square * b * SeriesArea(b * b);
            var grown = 1 + b * b;
            return square * (grown * grown * Math.Atan(b) - b * (1 - b * b)) / (8 * b * b);
        }
    }

    /// <summary>
    /// First moment in mm³ of the area between chord and curve about the chord, positive to the right of the chord.
    /// </summary>
    /// <remarks>
    /// The moment of a circular segment about its circle's centre is c³/12; moved to the chord it is
    /// c³/12 - area × (distance from centre to chord).
    /// </remarks>
    internal double SegmentMoment
    {
        get
        {
            var chord = Chord.Length;
            var b = Bulge;
            if (Math.Abs(b) < FlatBulge)
                return chord * chord * chord / 4 * SeriesMoment(b * b);
            return chord * chord * chord / 12 - SegmentArea * chord * (1 - b * b) / (4 * b);
        }
    }

    /// <summary>Returns the point at a distance along the curve.</summary>
    /// <param name="length">Distance from the start in mm, from 0 to <see cref="Length"/>; outside it the nearer end is returned.</param>
    public Point PointAt(double length)
    {
        var total = Length;
        if (length <= 0)
            return Start;
        if (length >= total)
            return End;
        if (IsLine)
            return Start.Towards(End, length / total);
        var sweep = 4 * Math.Atan(Bulge);
        return AtTurn(sweep * (length / total), sweep);
    }

    /// <summary>Returns the direction of travel, of length 1, at a distance along the curve.</summary>
    /// <param name="length">Distance from the start in mm; outside the curve the nearer end counts.</param>
    /// <exception cref="InvalidOperationException">Start and end are the same point.</exception>
    public Vector TangentAt(double length)
    {
        var along = Chord.Unit();
        if (IsLine)
            return along;
        var share = Math.Clamp(length / Length, 0, 1);
        var turn = Angle.FromRadians(4 * Math.Atan(Bulge) * (share - 0.5));
        return along * turn.Cos() + along.Left * turn.Sin();
    }

    /// <summary>Returns the direction to the left of travel, of length 1, at a distance along the curve.</summary>
    /// <exception cref="InvalidOperationException">Start and end are the same point.</exception>
    public Vector NormalAt(double length) => TangentAt(length).Left;

    /// <summary>Returns the point of the curve nearest to a given one.</summary>
    public Point Nearest(Point point) => new SegmentFrame(this).Nearest(point);

    /// <summary>Returns where this segment and another come nearest to each other.</summary>
    /// <remarks>
    /// In closed form, for lines and arcs of any flatness. Where several places are equally near, as along parallel lines,
    /// it is one of them.
    /// </remarks>
    /// <returns>The half circle over (-1, 0) to (1, 0) and the line from (-3, 3) to (3, 3) come nearest at (0, 1) and (0, 3), 2 mm apart.</returns>
    public NearestPlaces NearestTo(Segment other) => NearestFinder.Between(new(this), new(other));

    /// <summary>Returns the distance in mm from a point to the curve.</summary>
    public double DistanceTo(Point point) => Nearest(point).DistanceTo(point);

    /// <summary>Returns the distance in mm from the start to a point on the curve; off the curve, to its foot there.</summary>
    public double LengthAt(Point point)
    {
        var frame = new ArcFrame(this);
        var total = Length;
        var s = frame.Foot(point);
        if (!(Math.Abs(s) < frame.Half))
            return point.DistanceTo(Start) <= point.DistanceTo(End) ? 0 : total;
        return Math.Clamp(frame.Walked(s) + total / 2, 0, total);
    }

    /// <summary>Returns the two parts before and after a distance along the curve; both lie on the same line or circle.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not strictly between 0 and <see cref="Length"/>.</exception>
    public (Segment Before, Segment After) SplitAt(double length)
    {
        var total = Length;
        if (!(length > 0 && length < total))
            throw new ArgumentOutOfRangeException(
                nameof(length),
                $"A segment {Guard.Text(total)} mm long is split between its ends, not at {Guard.Text(length)} mm."
            );
        var at = PointAt(length);
        return (
            new(Start, at, PartBulge(length / total)),
            new(at, End, PartBulge(1 - length / total))
        );
    }

    /// <summary>Bulge of the part that makes up the given share of this segment.</summary>
    internal double PartBulge(double share) => IsLine ? 0 : Math.Tan(Math.Atan(Bulge) * share);

    /// <summary>Returns the arc as parts of at most a half circle; a line or smaller arc is its own only part.</summary>
    internal (Segment First, Segment? Second) Halves()
    {
        if (Math.Abs(Bulge) <= 1)
            return (this, null);
        var half = PartBulge(0.5);
        return (new(Start, Middle, half), new(Middle, End, half));
    }

    /// <summary>
    /// Point after turning through part of the sweep. The chord walked so far is c·sin(φ/2)/sin(θ/2), in the direction
    /// of the chord turned by (φ - θ)/2: no centre, so no loss on flat arcs.
    /// </summary>
    private Point AtTurn(double turn, double sweep)
    {
        var share = Math.Sin(turn / 2) / Math.Sin(sweep / 2);
        var (sin, cos) = Math.SinCos((turn - sweep) / 2);
        var chord = Chord;
        return Start + (chord * cos + chord.Left * sin) * share;
    }

    /// <summary>Σ s_k u^(k-1) with s_k = (-1)^k / ((2k+1)(2k-1)(2k-3)): the area over c² b, for u = b².</summary>
    private static double SeriesArea(double u)
    {
        double sum = 0;
        for (var k = 8; k >= 1; k--)
            sum = sum * u + SeriesTerm(k);
        return sum;
    }

    /// <summary>1/3 - (1 - u) × <see cref="SeriesArea"/>, term by term: four moments over c³.</summary>
    private static double SeriesMoment(double u)
    {
        double sum = 0;
        for (var k = 8; k >= 1; k--)
            sum = sum * u + (SeriesTerm(k) - SeriesTerm(k + 1));
        return sum * u;
    }

    private static double SeriesTerm(int k) =>
        (k % 2 == 0 ? 1.0 : -1.0) / ((2 * k + 1) * (2 * k - 1) * (2 * k - 3));
}
