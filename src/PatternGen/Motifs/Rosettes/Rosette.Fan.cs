using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    /// <summary>Narrowest fan in degrees; in less, petals are too narrow to cut.</summary>
    private const double NarrowestFan = 10;

    /// <summary>Widest fan in degrees; beyond, its two radii leave no room for a knife between them.</summary>
    private const double WidestFan = 350;

    /// <summary>Returns a fan: the part of a rosette of petals between two radii, for edges and corners.</summary>
    /// <remarks>
    /// The petals share the angle evenly, so that three in a quarter circle are those of a rosette of twelve. The outline
    /// is both radii and the arc of the rim between them. It makes 2n + 1 faces, and one more for a disc.
    /// </remarks>
    /// <param name="count">Number of petals, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="fromDegrees">Direction of the first radius, counter-clockwise from the right; 0 by default.</param>
    /// <param name="toDegrees">Direction of the last radius, counter-clockwise from the first; 180 by default, a half circle.</param>
    /// <param name="centre">Diameter in mm of the disc whose part stays plain, as for <see cref="Petals"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The fan is narrower than 10° or wider than 350°, or the disc is as large as the rim.</exception>
    public static Rosette Fan(
        int count,
        double radius,
        double fromDegrees = 0,
        double toDegrees = 180,
        double? centre = null
    )
    {
        RosetteSizes.Radius(radius);
        var plain = RosetteSizes.Centre(centre, RosetteSizes.Count(count), radius);
        var from = Angle.FromDegrees(Guard.Finite(fromDegrees));
        var span = (Angle.FromDegrees(Guard.Finite(toDegrees)) - from).Normalized();
        RefuseSpan(span);
        return Of(
            new(RosetteFamily.Fan, count, radius)
            {
                FromDegrees = fromDegrees,
                ToDegrees = toDegrees,
                Centre = centre,
            },
            plain,
            drafting => new FanDrafting(drafting, count, radius, from, span).Draw(plain / 2)
        );
    }

    private static void RefuseSpan(Angle span)
    {
        if (span.Degrees is not (>= NarrowestFan and <= WidestFan))
            throw new PatternException(
                $"A fan cannot open to {span}, counted counter-clockwise from the first radius to the last.",
                Point.Origin,
                [
                    $"{Guard.Text(NarrowestFan)} to {Guard.Text(WidestFan)} degrees",
                    "a rosette of petals, which is a whole turn",
                ]
            );
    }
}
