using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Where a band lies beside the path that it is bent along, and how tightly the path may then bend.</summary>
/// <param name="Offset">Distance in mm from the path to the lowest rule, positive to the left.</param>
/// <param name="Low">Lowest y of the band; 0 for ruled ones.</param>
/// <param name="High">Highest y of the band.</param>
/// <param name="Measured">Distance in mm from the path to the line where lengths are measured, positive to the left.</param>
/// <param name="Slants">The straight slanted sides that stay straight, of a repeat; none where sides follow the curve.</param>
/// <param name="LongestPitch">The longest repeat that a fit may come to, in mm.</param>
internal sealed record BandSpan(
    double Offset,
    double Low,
    double High,
    double Measured,
    IReadOnlyList<BandSlant> Slants,
    double LongestPitch
)
{
    /// <summary>
    /// Smallest radius in mm of the innermost edge of a band. It keeps chips that run together towards a centre apart
    /// by far more than the tolerance; whether they can be carved is for the inspection to say.
    /// </summary>
    private const double LeastEdge = 0.1;

    /// <summary>Halvings of the search for a radius or pitch that works.</summary>
    private const int SearchSteps = 60;

    /// <summary>Returns the smallest radius in mm of an arc of the path that this band can be bent round at any pitch it may be fitted to.</summary>
    /// <param name="side">1 for an arc that turns left, -1 for one that turns right.</param>
    internal double LeastRadius(int side) =>
        Edge(1e-12, Guard.MaxSize, radius => IsRoomy(radius, side, LongestPitch));

    /// <exception cref="PatternException">The edge of the band would come to or over the centre of the arc.</exception>
    internal void RefuseTight(double radius, int side, Point place)
    {
        if (InnerEdge(radius, side) >= LeastEdge)
            return;
        var reach = radius - InnerEdge(radius, side);
        throw new PatternException(
            $"An arc of {Guard.Text(radius)} mm radius is too tight for a band that reaches {Guard.Text(reach)} mm to its inner side.",
            place,
            [
                $"a radius of at least {FitTrouble.Up(LeastRadius(side))} mm",
                "a lower band",
                "the band on the outer side of the arc",
            ]
        );
    }

    /// <summary>Refuses straight sides that would cut across a rule.</summary>
    /// <exception cref="PatternException">They do, at an arc of the line.</exception>
    internal void RefuseStraightSides(BendLine line, double pitch)
    {
        foreach (var arc in line.Pieces.OfType<ArcPiece>())
        {
            var radius = arc.Radius + arc.Side * Offset;
            if (IsRoomy(radius, arc.Side, pitch))
                continue;
            var works = Edge(pitch, 0, shorter => IsRoomy(radius, arc.Side, shorter));
            throw new PatternException(
                $"With repeats of {Guard.Text(pitch)} mm along an arc of {Guard.Text(radius)} mm radius, straight sides of chips would cut across a rule of the band.",
                arc.Map(arc.Start + arc.Length / 2, (Low + High) / 2),
                [
                    "sides that follow the curve (BentSides.Following)",
                    $"a pitch of at most {FitTrouble.Down(works)} mm",
                    $"a radius of at least {FitTrouble.Up(LeastRadius(arc.Side))} mm",
                ]
            );
        }
    }

    /// <summary>Says that a band can't turn a corner, by what angle in radians, positive to the left.</summary>
    internal PatternException Corner(Point place, double turn) =>
        new(
            $"The path turns by {Guard.Text(Math.Abs(double.RadiansToDegrees(turn)))} degrees at a corner, which a band can't be bent round.",
            place,
            [
                $"the corner rounded with a radius of at least {FitTrouble.Up(LeastRadius(Math.Sign(turn)))} mm",
                "a band for each side, which ends at the corner",
            ]
        );

    private double InnerEdge(double radius, int side) =>
        radius - Math.Max(side * (Offset + Low), side * (Offset + High));

    private bool IsRoomy(double radius, int side, double pitch)
    {
        var measured = radius - side * Measured;
        return InnerEdge(radius, side) >= LeastEdge
            && measured > 0
            && Slants.All(slant =>
                slant.StaysInStrip(
                    radius - side * (Offset + slant.Low),
                    radius - side * (Offset + slant.High),
                    slant.Along(pitch) / measured
                )
            );
    }

    /// <summary>The value between one that fails and one that works from where on they work, on the side that does.</summary>
    private static double Edge(double fails, double works, Func<double, bool> isGood)
    {
        for (var step = 0; step < SearchSteps; step++)
        {
            var middle = (fails + works) / 2;
            (fails, works) = isGood(middle) ? (fails, middle) : (middle, works);
        }
        return works;
    }
}
