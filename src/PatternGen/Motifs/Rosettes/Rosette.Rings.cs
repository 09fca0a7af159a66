using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    /// <summary>
    /// Returns a rosette on two levels: petals from the centre to an inner circle, and larger ones, half a step on, that
    /// show between the inner circle and the rim.
    /// </summary>
    /// <remarks>
    /// The inner petals have arcs of radius r / (2 sin(180°/n)), the outer ones of R / (2 sin(180°/n)): for eight petals
    /// of 40 mm on 20 mm 26.131 and 52.263.
    /// </remarks>
    /// <param name="count">Number of petals on each level, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="inner">Radius of the inner circle in mm; half that of the rim by default.</param>
    /// <param name="centre">Diameter of the plain disc in mm, as for <see cref="Petals"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The inner circle is not within the rim, or the disc not within the inner circle.</exception>
    public static Rosette TwoLevel(
        int count,
        double radius,
        double? inner = null,
        double? centre = null
    )
    {
        RosetteSizes.Radius(radius);
        RosetteSizes.Count(count);
        var middle = RosetteSizes.Inner(inner ?? radius / 2, radius, name: nameof(inner));
        var plain = RosetteSizes.Centre(centre, count, middle);
        return Of(
            new(RosetteFamily.TwoLevel, count, radius) { Inner = inner, Centre = centre },
            plain,
            Draw
        );

        void Draw(RosetteDrafting drafting)
        {
            var (tips, between) = drafting.DivideTwice(drafting.Rim(radius), count);
            var ring = drafting.Ring(middle);
            var innerTips = drafting.OnRing(ring, between);
            drafting.DrawPetals(tips, ring);
            drafting.DrawPetals(innerTips, drafting.Disc(plain));
            drafting.MarkPetals([.. tips, .. innerTips]);
        }
    }

    /// <summary>Returns a rosette of two-sided petals between two circles, with a plain centre.</summary>
    /// <remarks>
    /// The petals have tips of 60°, as those of a rosette of six, or as much less as leaves the ridge between
    /// neighbours. Petals that touch do so at √(rR) from the centre, since the tangents from there are that long: Euclid
    /// III.36.
    /// </remarks>
    /// <param name="count">Number of petals, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="inner">Radius of the inner circle in mm.</param>
    /// <param name="ridge">Least distance between neighbours in mm, 0 or more; 1 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The inner circle is not within the rim, or the ridge leaves no room for petals.</exception>
    public static Rosette PetalRing(int count, double radius, double inner, double ridge = 1)
    {
        RosetteSizes.Radius(radius);
        RosetteSizes.Inner(inner, radius);
        var shape = RingPetal.Of(
            RosetteSizes.Count(count),
            radius,
            inner,
            Guard.NotNegative(ridge)
        );
        return Of(
            new(RosetteFamily.PetalRing, count, radius) { Inner = inner, Ridge = ridge },
            2 * inner,
            Draw
        );

        void Draw(RosetteDrafting drafting)
        {
            var tips = drafting.DivideRim(radius, count);
            var feet = drafting.OnRing(drafting.Disc(2 * inner)!, tips);
            drafting.Pencil.SetRadius(shape.ArcRadius);
            drafting.Pencil.ArcsThrough([.. feet, .. tips], [.. tips, .. feet]);
            drafting.MarkPetals(tips);
        }
    }
}
