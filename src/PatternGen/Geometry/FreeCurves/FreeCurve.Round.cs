namespace PatternGen.Geometry;

public sealed partial class FreeCurve
{
    private const double MostTurns = 10_000;

    /// <summary>Returns a whole ellipse, counter-clockwise from the end of its first half axis.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="radiusX">Half of its first axis, in mm.</param>
    /// <param name="radiusY">Half of its second axis, in mm. With 4 and 3 it is 22.1034921607095 mm round.</param>
    /// <param name="turn">Direction of the first axis; level if left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius is not positive, or a point lies beyond 2 km.</exception>
    public static FreeCurve Ellipse(
        Point centre,
        double radiusX,
        double radiusY,
        Angle turn = default
    ) => Ellipse(centre, radiusX, radiusY, turn, Angle.Zero, Angle.FullTurn);

    /// <summary>Returns a part of an ellipse.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="radiusX">Half of its first axis, in mm.</param>
    /// <param name="radiusY">Half of its second axis, in mm.</param>
    /// <param name="turn">Direction of the first axis.</param>
    /// <param name="from">
    /// Where it starts, as the angle a in centre + radiusX cos a + radiusY sin a: 0 at the first axis, 90 degrees at the second.
    /// </param>
    /// <param name="sweep">How far a goes on, counter-clockwise if positive, at most a whole turn and not 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius is not positive, the sweep is 0 or more than a whole turn, or a point lies beyond 2 km.</exception>
    public static FreeCurve Ellipse(
        Point centre,
        double radiusX,
        double radiusY,
        Angle turn,
        Angle from,
        Angle sweep
    )
    {
        Guard.Place(centre);
        Guard.Positive(radiusX);
        Guard.Positive(radiusY);
        if (sweep.Radians == 0 || Math.Abs(sweep.Radians) > Math.Tau)
            Guard.Throw(
                nameof(sweep),
                nameof(sweep),
                sweep.Degrees,
                "must be more than 0 and at most 360 degrees either way"
            );
        var axis = Vector.Towards(turn);
        var (u, v) = (axis * radiusX, axis.Left * radiusY);
        Guard.Place(centre + u + v, nameof(centre));
        Guard.Place(centre - u - v, nameof(centre));
        return new(
            Quarters(
                sweep.Radians,
                (share, part) =>
                    new EllipsePiece(centre, u, v, from.Radians + sweep.Radians * share, part)
            )
        );
    }

    /// <summary>Returns an Archimedean spiral, whose turns lie equally far apart.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="startRadius">Distance from the middle at its start in mm, 0 or more.</param>
    /// <param name="growth">How much farther it is from the middle after each turn, in mm; negative winds inwards.</param>
    /// <param name="from">Direction from the middle to the start.</param>
    /// <param name="turns">Number of turns, counter-clockwise if positive. From radius 0 with growth 2, three turns end at radius 6.</param>
    /// <exception cref="ArgumentException">The radius and the growth are both 0.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite or too large, there are no turns, or the spiral would pass its middle.</exception>
    public static FreeCurve ArchimedeanSpiral(
        Point centre,
        double startRadius,
        double growth,
        Angle from,
        double turns
    )
    {
        Spiral(centre, startRadius, turns);
        Guard.Within(growth, -Guard.MaxSize, Guard.MaxSize);
        var gain = growth * Math.Abs(turns);
        if (startRadius == 0 && growth == 0)
            throw new ArgumentException(
                "A spiral that starts in its middle has to grow, but the growth is 0.",
                nameof(growth)
            );
        Outermost(centre, startRadius + gain, nameof(growth));
        return new(
            Quarters(
                turns * Math.Tau,
                (share, part) =>
                    new SpiralPiece(
                        centre,
                        startRadius + gain * share,
                        gain * (part / (turns * Math.Tau)),
                        isLogarithmic: false,
                        from.Radians + turns * Math.Tau * share,
                        part
                    )
            )
        );
    }

    /// <summary>Returns a logarithmic spiral, which looks the same at every size and meets all radii at one angle.</summary>
    /// <param name="centre">Its middle, which it never reaches.</param>
    /// <param name="startRadius">Distance from the middle at its start in mm.</param>
    /// <param name="factor">
    /// By how much the distance is multiplied in each turn; below 1 winds inwards. With a pitch of p degrees, the angle between
    /// the curve and a circle round the middle, it is exp(2π tan p): 1.874 for r = exp(0.1 θ), with p = 5.71.
    /// </param>
    /// <param name="from">Direction from the middle to the start.</param>
    /// <param name="turns">Number of turns, counter-clockwise if positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, not positive or too large, or there are no turns.</exception>
    public static FreeCurve LogarithmicSpiral(
        Point centre,
        double startRadius,
        double factor,
        Angle from,
        double turns
    )
    {
        Spiral(centre, Guard.Positive(startRadius), turns);
        Guard.Within(factor, 1e-6, 1e6);
        var rate = Math.Log(factor) * Math.Abs(turns);
        Outermost(centre, startRadius * Math.Exp(rate), nameof(factor));
        return new(
            Quarters(
                turns * Math.Tau,
                (share, part) =>
                    new SpiralPiece(
                        centre,
                        startRadius * Math.Exp(rate * share),
                        rate * (part / (turns * Math.Tau)),
                        isLogarithmic: true,
                        from.Radians + turns * Math.Tau * share,
                        part
                    )
            )
        );
    }

    private static void Spiral(Point centre, double startRadius, double turns)
    {
        Guard.Place(centre);
        Guard.NotNegative(startRadius);
        Guard.Within(turns, -MostTurns, MostTurns);
        if (turns == 0)
            Guard.Throw(nameof(turns), nameof(turns), turns, "must not be 0");
        Outermost(centre, startRadius, nameof(startRadius));
    }

    /// <summary>Refuses a radius that passes the middle or the limits.</summary>
    private static void Outermost(Point centre, double radius, string name)
    {
        if (!(radius >= 0 && radius <= Guard.MaxSize))
            Guard.Throw(
                name,
                $"The radius that {name} leads to",
                radius,
                "must be 0 or more and at most 1,000,000 mm"
            );
        Guard.Place(centre + new Vector(radius, radius), nameof(centre));
        Guard.Place(centre - new Vector(radius, radius), nameof(centre));
    }

    /// <summary>Parts of at most a quarter turn, each with its start as a share of the whole and its own sweep in radians.</summary>
    private static CurvePiece[] Quarters(double sweep, Func<double, double, CurvePiece> piece)
    {
        var count = (int)Math.Ceiling(Math.Abs(sweep) / (Math.PI / 2) - 1e-9);
        count = Math.Max(1, count);
        return [.. Enumerable.Range(0, count).Select(i => piece((double)i / count, sweep / count))];
    }
}
