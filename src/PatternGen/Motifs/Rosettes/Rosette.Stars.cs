using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    /// <summary>Returns a star that joins every so many of the points that divide the rim: {8/3} joins every third of eight.</summary>
    /// <remarks>
    /// Its strokes are as many as the greatest common divisor of both numbers: {6/2} is two triangles, {8/3} is drawn
    /// without lifting the pencil. Neighbouring lines cross at R cos(k 180°/n) / cos((k − 1) 180°/n): 15.279 mm for
    /// {5/2} of 40 mm. From MathWorld, "Star Polygon". It makes nk + 1 faces.
    /// </remarks>
    /// <param name="count">Number of points n, 5 to 36.</param>
    /// <param name="every">To every how many-th point k a line goes: at least 2, and less than half of n.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">There is no such star.</exception>
    public static Rosette Star(int count, int every, double radius)
    {
        RosetteSizes.Radius(radius);
        RefuseNoStar(RosetteSizes.Count(count), every);
        var strokes = CommonDivisor.Of(count, every);
        return Of(new(RosetteFamily.Star, count, radius) { Every = every }, 0, Draw, strokes);

        void Draw(RosetteDrafting drafting)
        {
            var tips = drafting.DivideRim(radius, count);
            drafting.Pencil.JoinRound(tips, every);
            drafting.MarkPetals(tips);
        }
    }

    /// <summary>
    /// Returns a star whose points are halved by lines from the centre to tips and notches; one half of each, carved, makes
    /// the points look folded.
    /// </summary>
    /// <remarks>It makes 3n faces, and one more for a disc. The halves right of the tips are the petals.</remarks>
    /// <param name="count">Number of points, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="inner">Distance of the notches from the centre in mm; 0.4 of the radius by default.</param>
    /// <param name="centre">Diameter of the plain disc in mm, as for <see cref="Petals"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The notches are so far out, or the disc so large, that nothing is left of the points.</exception>
    public static Rosette SplitStar(
        int count,
        double radius,
        double? inner = null,
        double? centre = null
    )
    {
        RosetteSizes.Radius(radius);
        var flat = Math.Cos(Math.PI / RosetteSizes.Count(count));
        var notch = RosetteSizes.Inner(inner ?? 0.4 * radius, radius, flat, nameof(inner));
        var plain = RosetteSizes.Centre(centre, count, notch);
        return Of(
            new(RosetteFamily.SplitStar, count, radius) { Inner = inner, Centre = centre },
            plain,
            Draw
        );

        void Draw(RosetteDrafting drafting)
        {
            var (tips, between) = drafting.DivideTwice(drafting.Rim(radius), count);
            var notches = drafting.OnRing(drafting.Ring(notch, PencilLine.Guide), between);
            drafting.DrawZigzag(tips, notches);
            drafting.DrawRadii([.. tips, .. notches], drafting.Disc(plain));
            foreach (var (tip, next) in tips.Zip(RosetteDrafting.Turned(notches, -1)))
                drafting.MarkPetalBefore(tip.Point.Towards(next.Point, 0.5));
        }
    }

    private static void RefuseNoStar(int count, int every)
    {
        var most = (count - 1) / 2;
        if (every >= 2 && every <= most)
            return;
        throw new PatternException(
            $"Joining every {Guard.Text(every)} of {count} points makes no star.",
            remedies: most switch
            {
                < 2 => ["5 points, every second joined"],
                2 => ["every second point joined"],
                _ => [$"a number from 2 to {most}"],
            }
        );
    }
}
