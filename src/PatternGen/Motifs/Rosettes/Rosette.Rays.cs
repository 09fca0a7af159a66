namespace PatternGen;

public sealed partial class Rosette
{
    /// <summary>Returns a rosette of rays: triangles that stand side by side on an inner circle, with their tips on the rim.</summary>
    /// <remarks>Between them remain as many that hang from the rim; the disc inside stays plain. It makes 2n + 1 faces.</remarks>
    /// <param name="count">Number of rays, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="inner">Radius of the inner circle in mm, less than R cos(180°/n); half of that by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The inner circle is so large that the rays would cross it.</exception>
    public static Rosette Rays(int count, double radius, double? inner = null)
    {
        RosetteSizes.Radius(radius);
        // A side of a ray leaves the inner circle outwards only if the tip lies over its tangent there.
        var flat = Math.Cos(Math.PI / RosetteSizes.Count(count));
        var foot = RosetteSizes.Inner(inner ?? flat * radius / 2, radius, flat, nameof(inner));
        return Of(new(RosetteFamily.Rays, count, radius) { Inner = inner }, 2 * foot, Draw);

        void Draw(RosetteDrafting drafting)
        {
            var (tips, between) = drafting.DivideTwice(drafting.Rim(radius), count);
            drafting.DrawZigzag(tips, drafting.OnRing(drafting.Disc(2 * foot)!, between));
            drafting.MarkPetals(tips);
        }
    }

    /// <summary>Returns a ring of diamonds, tip to tip, between two circles, with a plain centre.</summary>
    /// <remarks>On both sides of the diamonds remain triangles on the circles. It makes 3n + 1 faces.</remarks>
    /// <param name="count">Number of diamonds, 3 to 36.</param>
    /// <param name="radius">Radius of the rim in mm, 1 to 4000.</param>
    /// <param name="inner">
    /// Radius of the inner circle in mm, less than R cos(180°/n) / (2 − cos(180°/n)); half of that by default.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The inner circle is so large that the diamonds would cross it.</exception>
    public static Rosette Diamonds(int count, double radius, double? inner = null)
    {
        RosetteSizes.Radius(radius);
        // As for rays, but the sides come from the circle half-way between.
        var cos = Math.Cos(Math.PI / RosetteSizes.Count(count));
        var share = cos / (2 - cos);
        var foot = RosetteSizes.Inner(inner ?? share * radius / 2, radius, share, nameof(inner));
        return Of(new(RosetteFamily.Diamonds, count, radius) { Inner = inner }, 2 * foot, Draw);

        void Draw(RosetteDrafting drafting)
        {
            var (tips, between) = drafting.DivideTwice(drafting.Rim(radius), count);
            var feet = drafting.OnRing(drafting.Disc(2 * foot)!, tips);
            var middle = drafting.Ring((radius + foot) / 2, PencilLine.Guide);
            var corners = drafting.OnRing(middle, between);
            drafting.DrawZigzag(tips, corners);
            drafting.DrawZigzag(feet, corners);
            drafting.MarkPetals(tips);
        }
    }
}
