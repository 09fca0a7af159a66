using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    private const int MostSets = 6;

    /// <summary>Most petals of all sets together; of more, none is wide enough to cut.</summary>
    private const int MostOverlaid = 72;

    /// <summary>
    /// Returns a rosette of several sets of petals turned evenly against each other: <c>Overlaid(2, 6, 40)</c> is the
    /// walk round the rim with its second six.
    /// </summary>
    /// <remarks>
    /// Drawn whole, s sets of n petals make sn(s + 1) faces, and one more for a disc: 36 for two sets of six without a
    /// disc. Each petal is as wide as in <see cref="Petals"/> of n.
    /// </remarks>
    /// <param name="sets">Number of sets, 2 to 6.</param>
    /// <param name="petals">Number of petals in each, 3 to 36; 72 in all sets together at most.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="crossing">Whether the later sets are drawn through the earlier ones, by default, or stop at them.</param>
    /// <param name="centre">Diameter of the plain disc in mm, as for <see cref="Petals"/>; the tips of all sets count.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">There are too many petals, or the disc reaches where the later sets stop.</exception>
    public static Rosette Overlaid(
        int sets,
        int petals,
        double radius,
        PetalCrossing crossing = PetalCrossing.Whole,
        double? centre = null
    )
    {
        RosetteSizes.Radius(radius);
        Guard.Within(sets, 2, MostSets);
        Guard.Defined(crossing);
        var tips = sets * RosetteSizes.Count(petals);
        RefuseManyPetals(sets, petals, tips);
        var plain = RosetteSizes.Centre(centre, tips, radius);
        RefuseDiscOverCrossings(plain, OverlaidPetals.NearestCrossing(sets, petals, radius));
        return Of(
            new(RosetteFamily.Overlaid, petals, radius)
            {
                Sets = sets,
                Crossing = crossing,
                Centre = centre,
            },
            plain,
            Draw,
            sets,
            titled: crossing == PetalCrossing.Stopped
                ? (words, title) => words.RosetteBehind(title)
                : null
        );

        void Draw(RosetteDrafting drafting)
        {
            var points = drafting.DivideRim(radius, tips);
            new OverlaidPetals(drafting, sets, points, drafting.Disc(plain)).Draw(crossing);
            drafting.MarkPetals(points);
        }
    }

    private static void RefuseManyPetals(int sets, int petals, int tips)
    {
        if (tips > MostOverlaid)
            throw new PatternException(
                $"{sets} sets of {petals} petals are {tips} petals, too narrow to cut.",
                remedies:
                [
                    $"at most {MostOverlaid / sets} petals in each of {sets} sets",
                    $"at most {MostOverlaid} petals in all",
                ]
            );
    }

    private static void RefuseDiscOverCrossings(double centre, double nearest)
    {
        if (!RosetteSizes.IsBelow(centre, 2 * nearest))
            throw new PatternException(
                $"A plain centre {Guard.Text(centre)} mm wide covers places where petals cross, {Guard.Text(nearest)} mm from the centre.",
                Point.Origin,
                [$"a centre of less than {Guard.Text(2 * nearest)} mm", "fewer sets"]
            );
    }
}
