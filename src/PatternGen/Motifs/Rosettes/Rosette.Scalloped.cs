using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    /// <summary>Height of a scallop over half its width, unless asked otherwise; a half circle has 1.</summary>
    private const double ScallopRise = 0.6;

    /// <summary>
    /// Returns a rosette of petals with a scalloped rim: arcs from tip to tip bulge out over the circle of the tips, up to
    /// the rim, which itself is only a guide line.
    /// </summary>
    /// <remarks>It makes 3n faces, petals, gaps and crescents, and one more for a disc.</remarks>
    /// <param name="count">Number of petals, 3 to 36.</param>
    /// <param name="radius">Distance in mm from the centre to the tops of the scallops, 1 to 4000.</param>
    /// <param name="inner">
    /// Radius in mm of the circle of the tips. By default the scallops are 0.3 as high as they are wide; they stay under a
    /// half circle.
    /// </param>
    /// <param name="centre">Diameter of the plain disc in mm, as for <see cref="Petals"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The circle of the tips is not within the rim, or so small that the scallops would be half circles or more.</exception>
    public static Rosette Scalloped(
        int count,
        double radius,
        double? inner = null,
        double? centre = null
    )
    {
        RosetteSizes.Radius(radius);
        var (sin, cos) = Math.SinCos(Math.PI / RosetteSizes.Count(count));
        var ring = RosetteSizes.Inner(
            inner ?? radius / (cos + ScallopRise * sin),
            radius,
            name: nameof(inner)
        );
        RefuseHighScallops(ring, radius, radius / (cos + sin));
        var plain = RosetteSizes.Centre(centre, count, ring);
        var rise = radius - ring * cos;
        // From half the chord and the height: R = (a² + h²) / 2h.
        var bend = (ring * sin * (ring * sin) + rise * rise) / (2 * rise);
        return Of(
            new(RosetteFamily.Scalloped, count, radius) { Inner = inner, Centre = centre },
            plain,
            Draw
        );

        void Draw(RosetteDrafting drafting)
        {
            drafting.Rim(radius, PencilLine.Guide);
            MarkedPoint[] tips = [.. drafting.Pencil.DivideCircle(drafting.Ring(ring), count)];
            drafting.Pencil.SetRadius(bend);
            drafting.Pencil.ArcsThrough(tips, RosetteDrafting.Turned(tips, 1));
            drafting.DrawPetals(tips, drafting.Disc(plain));
            drafting.MarkPetals(tips);
        }
    }

    private static void RefuseHighScallops(double ring, double radius, double least)
    {
        if (!RosetteSizes.IsBelow(least, ring))
            throw new PatternException(
                $"Scallops from a circle of {Guard.Text(ring)} mm radius up to {Guard.Text(radius)} mm would be half circles or more.",
                new(0, radius),
                [
                    $"an inner radius of more than {Guard.Text(least)} mm",
                    $"a radius of less than {Guard.Text(radius * ring / least)} mm",
                ]
            );
    }
}
