using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    /// <summary>Returns a rosette of two-sided petals from the centre to the rim, neighbours tangent at the centre.</summary>
    /// <remarks>
    /// A tip has 360°/n. Both sides of a petal are arcs of radius R / (2 sin(180°/n)): 77.274 mm for 12 petals of 40 mm,
    /// and R itself for six, which are drawn by walking round the rim with the radius. For more than six the needle
    /// stands outside the rim, and the steps say so. From Euclid III.32, the angle between tangent and chord.
    /// </remarks>
    /// <param name="count">Number of petals, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="centre">
    /// Diameter in mm of a disc in the middle that stays plain, 0 for none. By default 0 for up to 8 petals and 1.5 for
    /// more: common practice, since more tips than that in one point break out.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The disc is as large as the rim.</exception>
    public static Rosette Petals(int count, double radius, double? centre = null)
    {
        RosetteSizes.Radius(radius);
        var plain = RosetteSizes.Centre(centre, RosetteSizes.Count(count), radius);
        return Of(new(RosetteFamily.Petals, count, radius) { Centre = centre }, plain, Draw);

        void Draw(RosetteDrafting drafting)
        {
            var tips = drafting.DivideRim(radius, count);
            drafting.DrawPetals(tips, drafting.Disc(plain));
            drafting.MarkPetals(tips);
        }
    }

    /// <summary>
    /// Returns a rosette of petals, and leaves along the rim: from tip to tip an arc curves in as far as the rim curves
    /// out. Between petals and leaves remain triangles of three arcs.
    /// </summary>
    /// <remarks>
    /// With six petals all leaves and petals are alike, and every arc has the rim's radius. The leaves count as petals
    /// too. It makes 3n faces, and one more for a disc.
    /// </remarks>
    /// <param name="count">Number of petals, 6 to 36; fewer are so wide that the leaves would lie across them.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="centre">Diameter of the plain disc in mm, as for <see cref="Petals"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">There are fewer than 6 petals, or the disc reaches the leaves.</exception>
    public static Rosette Wreathed(int count, double radius, double? centre = null)
    {
        RosetteSizes.Radius(radius);
        RefuseFewLeaves(RosetteSizes.Count(count));
        var plain = RosetteSizes.Centre(centre, count, radius);
        RefuseDiscOnLeaves(plain, radius * (2 * Math.Cos(Math.PI / count) - 1));
        return Of(new(RosetteFamily.Wreathed, count, radius) { Centre = centre }, plain, Draw);

        void Draw(RosetteDrafting drafting)
        {
            var tips = drafting.DivideRim(radius, count);
            drafting.Pencil.SetRadius(radius);
            drafting.Pencil.ArcsThrough(RosetteDrafting.Turned(tips, 1), tips);
            drafting.DrawPetals(tips, drafting.Disc(plain));
            drafting.MarkPetals(tips);
            drafting.MarkPetalsBetween(tips, radius);
        }
    }

    private static void RefuseFewLeaves(int count)
    {
        const int fewest = 6;
        if (count < fewest)
            throw new PatternException(
                $"Of {count} petals each is so wide that leaves along the rim would lie across it.",
                remedies: [$"{fewest} petals or more", "petals without leaves"]
            );
    }

    private static void RefuseDiscOnLeaves(double centre, double reach)
    {
        if (!RosetteSizes.IsBelow(centre, 2 * reach))
            throw new PatternException(
                $"A plain centre {Guard.Text(centre)} mm wide reaches the leaves, which come within {Guard.Text(reach)} mm of the centre.",
                Point.Origin,
                [$"a centre of less than {Guard.Text(2 * reach)} mm"]
            );
    }
}
