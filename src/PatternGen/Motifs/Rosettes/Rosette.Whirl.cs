using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    /// <summary>Returns a whirl: curved radii from the centre to the rim.</summary>
    /// <remarks>Every part between two radii is like the next, so all can be carved, with sharp ridges between. It makes n faces, and one more for a disc.</remarks>
    /// <param name="count">Number of radii, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="turn">Which way they turn on their way out; to the left by default.</param>
    /// <param name="arcRadius">
    /// Radius of the arcs in mm, more than half that of the rim; 0.6 of it by default. With the rim's own radius the arcs
    /// turn through 60°.
    /// </param>
    /// <param name="centre">Diameter of the plain disc in mm, as for <see cref="Petals"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The arcs are too small to reach the rim, or the disc is as large as the rim.</exception>
    public static Rosette Whirl(
        int count,
        double radius,
        WhirlTurn turn = WhirlTurn.Left,
        double? arcRadius = null,
        double? centre = null
    )
    {
        RosetteSizes.Radius(radius);
        Guard.Defined(turn);
        var plain = RosetteSizes.Centre(centre, RosetteSizes.Count(count), radius);
        var bend = Guard.Positive(arcRadius ?? 0.6 * radius, nameof(arcRadius));
        RefuseShortArcs(bend, radius);
        return Of(
            new(RosetteFamily.Whirl, count, radius)
            {
                Turn = turn,
                ArcRadius = arcRadius,
                Centre = centre,
            },
            plain,
            Draw
        );

        void Draw(RosetteDrafting drafting)
        {
            var tips = drafting.DivideRim(radius, count);
            var disc = drafting.Disc(plain);
            drafting.Pencil.SetRadius(bend);
            var arcs =
                turn == WhirlTurn.Left
                    ? PetalArcs.Outward(
                        drafting.Centre,
                        drafting.Needles(tips, LineSide.Left),
                        tips
                    )
                    : PetalArcs.Inward(
                        drafting.Centre,
                        drafting.Needles(tips, LineSide.Right),
                        tips
                    );
            var halfStep = Transform.Rotate(180.0 / count);
            foreach (var radii in drafting.DrawFromDisc(arcs, tips, disc))
                drafting.Pencil.MarkPetal(halfStep.Apply(radii.Curve.Segment.Middle));
        }
    }

    private static void RefuseShortArcs(double bend, double radius)
    {
        if (!RosetteSizes.IsBelow(radius, 2 * bend))
            throw new PatternException(
                $"Arcs of {Guard.Text(bend)} mm radius from the centre do not cross a rim of {Guard.Text(radius)} mm radius.",
                Point.Origin,
                [
                    $"an arc radius of more than {Guard.Text(radius / 2)} mm",
                    $"a radius of less than {Guard.Text(2 * bend)} mm",
                ]
            );
    }
}
