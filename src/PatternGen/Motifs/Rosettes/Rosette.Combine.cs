using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Rosette
{
    private const int MostSides = 12;

    /// <summary>Returns a rosette in the plain centre of another. If it is smaller than that, a plain ring remains round it.</summary>
    /// <param name="outer">A rosette with a plain centre, such as rays or a ring of petals.</param>
    /// <param name="inner">
    /// The rosette in it, with a radius of at most half of <see cref="Centre"/>: <c>Nested(Rays(24, 40, 20), Petals(6, 20))</c>
    /// fills the disc.
    /// </param>
    /// <exception cref="PatternException">The inner rosette does not fit into the plain centre.</exception>
    public static Rosette Nested(Rosette outer, Rosette inner)
    {
        RefuseNoRoom(Guard.NotNull(outer), Guard.NotNull(inner));
        return new(
            new(RosetteFamily.Nested, outer.Count, outer.Radius) { Outer = outer, Inside = inner },
            outer.Radius,
            inner.Centre,
            Draw,
            words => words.RosetteRound(outer.Title(words), inner.Title(words))
        );

        void Draw(RosetteDrafting drafting)
        {
            var filled = drafting.Filled;
            drafting.Filled = inner.Radius;
            outer._draw(drafting);
            drafting.Filled = filled;
            inner._draw(drafting);
        }
    }

    /// <summary>Returns this rosette within a regular polygon that stands on one of its sides.</summary>
    /// <remarks>
    /// With a gap, what lies between rim and sides stays plain. Without a gap the sides touch the rim, and the circle through the corners has the radius R / cos(180°/n): 56.569 mm
    /// for a square round a rosette of 40 mm.
    /// </remarks>
    /// <param name="sides">Number of sides, 3 to 12.</param>
    /// <param name="gap">Distance in mm of the sides from the rim, 0 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public Rosette WithinPolygon(int sides, double gap = 0)
    {
        var half = Angle.OfTurn(0.5 / Guard.Within(sides, 3, MostSides));
        var corners = (Radius + RosetteSizes.NoneOrAtLeast(gap)) / half.Cos();
        var first = Angle.OfTurn(0.25) + (sides % 2 == 0 ? half : Angle.Zero);
        return new(
            new(RosetteFamily.WithinPolygon, Count, Radius)
            {
                Outer = this,
                Sides = sides,
                Gap = gap,
            },
            Guard.Positive(corners, nameof(gap)),
            Centre,
            Draw,
            words => words.RosetteWithin(Title(words), sides)
        );

        void Draw(RosetteDrafting drafting)
        {
            var ring = drafting.Ring(corners, PencilLine.Guide);
            var pencil = drafting.Pencil;
            pencil.JoinRound(pencil.DivideCircle(ring, sides, pencil.MarkOn(ring, first)));
            _draw(drafting);
            if (gap > 0)
                pencil.MarkPlain(new(0, -Radius - gap / 2));
        }
    }

    private static void RefuseNoRoom(Rosette outer, Rosette inner)
    {
        var room = outer.Centre / 2;
        if (inner.Radius <= room)
            return;
        throw new PatternException(
            $"A rosette of {Guard.Text(inner.Radius)} mm radius does not fit into a plain centre of {Guard.Text(room)} mm radius.",
            Point.Origin,
            [
                .. room > 0
                    ? [$"an inner rosette of at most {Guard.Text(room)} mm radius"]
                    : (string[])[],
                $"an outer rosette with a plain centre at least {Guard.Text(2 * inner.Radius)} mm wide",
            ]
        );
    }
}
