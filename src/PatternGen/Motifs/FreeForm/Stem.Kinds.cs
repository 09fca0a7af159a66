using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Stem
{
    /// <summary>Returns a vine: a stem that swings from side to side along the x axis, with a leaf in each bend and one at its tip.</summary>
    /// <param name="length">From base to tip in a straight line, in mm.</param>
    /// <param name="swing">From the lowest to the highest place of its middle line in mm; less than a wave is long.</param>
    /// <param name="waves">Number of whole waves, 1 to 1000.</param>
    /// <param name="width">Greatest width of the stem in mm; a twelfth of a wave, but at most 3, if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static Stem Vine(double length, double swing, int waves, double? width = null)
    {
        Guard.Positive(length);
        var wave = length / Guard.Within(waves, 1, 1000);
        Guard.Within(Guard.Positive(swing), 0, wave, nameof(swing));
        var thick = Guard.Positive(width ?? Math.Min(3, wave / 12), nameof(width));
        // Half circles would be the widest swing: each half wave is one arc over a quarter wave to either side.
        var half = wave / 2;
        List<Vertex> corners = [];
        for (var i = 0; i < 2 * waves; i++)
        {
            Point start = new(i * half, 0);
            Point end = new((i + 1) * half, 0);
            corners.Add(
                new(start, Segment.WithSagitta(start, end, (i % 2 == 0 ? -1 : 1) * swing / 2).Bulge)
            );
        }
        corners.Add(new(new Point(length, 0)));
        var path = new Chain(corners);
        var arc = path.Length / (2 * waves);
        return Along(path, thick)
            .WithLeaves(
                Leaf.Of(0.62 * half, 0.26 * half).WithWidestAt(0.42).Bent(-30).WithVein(),
                arc
            )
            .WithBareBase(0.8 * arc)
            .WithLeafAngle(50)
            .Diminishing(0.8);
    }

    /// <summary>Returns a fern: a stem with many narrow pairs of leaves, which get much smaller towards the tip.</summary>
    /// <param name="length">From base to tip in a straight line, in mm.</param>
    /// <param name="bend">How far it turns from base to tip in degrees, -170 to 170; positive to the left. Default 30.</param>
    /// <param name="width">Greatest width of the stem in mm; a fortieth of the length if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static Stem Fern(double length, double bend = 30, double? width = null)
    {
        var stem = Bending(length, bend, width ?? length / 40, nameof(width));
        return stem.WithLeaves(
                Leaf.Of(length / 4, length / 18).WithWidestAt(0.35).Bent(25),
                length / 9
            )
            .WithPlacing(LeafPlacing.Opposite)
            .WithLeafAngle(52)
            .Diminishing(0.25)
            .WithBareBase(length / 8);
    }

    /// <summary>Returns a spray: a stem with a few leaves left and right in turn, and one at its tip.</summary>
    /// <param name="length">From base to tip in a straight line, in mm.</param>
    /// <param name="bend">How far it turns from base to tip in degrees, -170 to 170; positive to the left. Default 40.</param>
    /// <param name="width">Greatest width of the stem in mm; a thirtieth of the length if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static Stem Spray(double length, double bend = 40, double? width = null)
    {
        var stem = Bending(length, bend, width ?? length / 30, nameof(width));
        return stem.WithLeaves(
                Leaf.Of(length / 3.4, length / 9).WithWidestAt(0.42).Bent(20).WithVein(),
                length / 7
            )
            .WithLeafAngle(42)
            .Diminishing(0.55)
            .WithBareBase(length / 7);
    }

    private static Stem Bending(double length, double bend, double width, string widthName)
    {
        Guard.Positive(length);
        Guard.Within(bend, -170, 170);
        Guard.Positive(width, widthName);
        var bulge = Math.Tan(double.DegreesToRadians(bend) / 4);
        return Along(Chain.Of(new Segment(Point.Origin, new(length, 0), bulge)), width);
    }
}
