using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    /// <summary>Returns a ring of equal circles that overlap; each touches the rim and the plain disc in the middle.</summary>
    /// <remarks>The outermost parts that neighbours share count as petals.</remarks>
    /// <param name="count">Number of circles, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="centre">
    /// Diameter of the plain disc in mm; by default half of what it would be for touching circles. With 0 all circles meet in the centre.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The disc is so large that the circles do not overlap.</exception>
    public static Rosette OverlappingCircles(int count, double radius, double? centre = null)
    {
        RosetteSizes.Radius(radius);
        var touching = PlainWithin(RosetteSizes.Count(count), radius);
        var plain = RosetteSizes.NoneOrAtLeast(centre ?? touching / 2, nameof(centre));
        RefuseCirclesApart(plain, touching);
        return Circles(
            new(RosetteFamily.OverlappingCircles, count, radius) { Centre = centre },
            plain
        );
    }

    /// <summary>Returns a ring of equal circles that touch one another, the rim, and the plain disc in the middle.</summary>
    /// <remarks>Each has the radius R sin(180°/n) / (1 + sin(180°/n)): six of them a third of R. It makes 3n + 1 faces.</remarks>
    /// <param name="count">Number of circles, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static Rosette TouchingCircles(int count, double radius)
    {
        RosetteSizes.Radius(radius);
        var plain = PlainWithin(RosetteSizes.Count(count), radius);
        return Circles(new(RosetteFamily.TouchingCircles, count, radius), plain);
    }

    private static Rosette Circles(RosetteMaking making, double plain)
    {
        var (family, count, radius) = making;
        return Of(making, plain, Draw);

        void Draw(RosetteDrafting drafting)
        {
            drafting.Rim(radius);
            drafting.Disc(plain);
            var middle = (radius + plain / 2) / 2;
            var needles = drafting.Pencil.DivideCircle(
                drafting.Ring(middle, PencilLine.Guide),
                count
            );
            drafting.Pencil.SetRadius(radius - middle);
            drafting.Pencil.Circles(needles);
            if (family == RosetteFamily.TouchingCircles)
                drafting.MarkPetals(needles);
            else
                drafting.MarkPetalsBetween(needles, OuterCrossing(count, middle, radius - middle));
        }
    }

    /// <summary>Distance from the centre of the outer place where neighbouring circles cross, by Pythagoras.</summary>
    private static double OuterCrossing(int count, double middle, double radius)
    {
        var (sin, cos) = Math.SinCos(Math.PI / count);
        return middle * cos + Math.Sqrt((radius - middle * sin) * (radius + middle * sin));
    }

    /// <summary>Diameter of the disc inside a ring of touching circles.</summary>
    private static double PlainWithin(int count, double radius)
    {
        var sin = Math.Sin(Math.PI / count);
        return 2 * radius * (1 - sin) / (1 + sin);
    }

    private static void RefuseCirclesApart(double plain, double touching)
    {
        if (!RosetteSizes.IsBelow(plain, touching))
            throw new PatternException(
                $"Round a plain centre {Guard.Text(plain)} mm wide the circles do not overlap.",
                Point.Origin,
                [$"a centre of less than {Guard.Text(touching)} mm", "touching circles"]
            );
    }
}
