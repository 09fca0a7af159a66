using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A scroll: a tapered stroke that winds inwards along a logarithmic spiral, round an eye.</summary>
/// <remarks>
/// The middle of the eye is at the origin, and the outer end on the right. It winds inwards counter-clockwise; a mirror image
/// (<see cref="Pattern.MirroredTopBottom"/>) winds the other way. The ends of its stroke are as fine as
/// <see cref="Stroke"/> says. Each method returns a changed copy. Immutable and safe to share between threads.
/// </remarks>
public sealed class Scroll : Pattern
{
    /// <summary>How much nearer to the middle each turn lies: as wide apart as the ridges between turns look even.</summary>
    private const double UsualFactor = 0.42;

    /// <summary>Width of the stroke as a share of the radius, at most, unless asked otherwise.</summary>
    private const double MostWidth = 0.2;

    /// <summary>Radius of the eye as a share of the scroll's, at most, unless asked otherwise.</summary>
    private const double UsualEye = 0.14;

    /// <summary>Places where the ridge between two turns is measured; it changes slowly.</summary>
    private const int Checks = 256;

    private Scroll(double radius, double turns)
    {
        Radius = radius;
        Turns = turns;
    }

    private Scroll(Scroll other)
        : this(other.Radius, other.Turns)
    {
        Factor = other.Factor;
        Width = other.Width;
        EyeRadius = other.EyeRadius;
    }

    /// <summary>From the middle of the eye to the outer end, in mm.</summary>
    public double Radius { get; }

    /// <summary>Number of turns.</summary>
    public double Turns { get; }

    /// <summary>What each turn leaves of the distance from the middle. Default 0.42.</summary>
    public double Factor { get; private init; } = UsualFactor;

    /// <summary>Greatest width of the stroke in mm; null, the default, for as wide as leaves a ridge of 1.2 mm between the turns, and at most a fifth of the radius.</summary>
    public double? Width { get; private init; }

    /// <summary>Radius of the eye in mm, a round chip in the middle; 0 for none; null, the default, for one that leaves a ridge of 1.2 mm and is at most 0.14 of the radius, if there is room for one of 1 mm.</summary>
    public double? EyeRadius { get; private init; }

    /// <summary>Returns a scroll.</summary>
    /// <param name="radius">From the middle of the eye to the outer end, in mm.</param>
    /// <param name="turns">Number of turns, 0.25 to 4.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static Scroll Of(double radius, double turns = 1.5) =>
        new(Guard.Positive(radius), Guard.Within(turns, 0.25, 4));

    /// <summary>Returns the scroll with a stroke of another width.</summary>
    /// <param name="width">Where it is widest, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not positive.</exception>
    [Pure]
    public Scroll WithWidth(double width) => new(this) { Width = Guard.Positive(width) };

    /// <summary>Returns the scroll with an eye of another size.</summary>
    /// <param name="radius">In mm; 0 for no eye.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [Pure]
    public Scroll WithEye(double radius) => new(this) { EyeRadius = Guard.NotNegative(radius) };

    /// <summary>Returns the scroll wound tighter or looser.</summary>
    /// <param name="factor">What each turn leaves of the distance from the middle, 0.1 to 0.8.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public Scroll WithFactor(double factor) =>
        new(this) { Factor = Guard.Within(factor, 0.1, 0.8) };

    internal override IEnumerable<string> Facts(Wording words) => [words.Scroll(Radius, Turns)];

    private protected override PatternNode Draw()
    {
        // A spiral's own arcs may be coarser than the stroke's sides: they are found from it once more.
        var path = FreeCurve
            .LogarithmicSpiral(Point.Origin, Radius, Factor, Angle.Zero, Turns)
            .ToChain(FreeFormShape.Accuracy);
        var most = Radius * MostWidth;
        var widest = most * FreeFormShape.LargestShare(share => LeavesRidge(path, most * share));
        var width = Width ?? widest;
        if (!(width > 0 && LeavesRidge(path, width)))
            throw TooWide(width, widest, path.End);
        var stroke = StrokeOutline.Of(path, Swell(path, width));
        if (!FreeFormShape.IsSound(stroke))
            throw TooWide(width, Math.Min(widest, 0.9 * width), path.End);
        return Eye(stroke) is { } eye ? FreeFormShape.Row(stroke, eye) : FreeFormShape.Row(stroke);
    }

    private PatternException TooWide(double width, double widest, Point place) =>
        new(
            $"A stroke {Guard.Text(width)} mm wide leaves no ridge between the turns of a scroll of radius {Guard.Text(Radius)} mm.",
            place,
            widest > 0
                ?
                [
                    $"a width of at most {Guard.Text(FreeFormShape.Down(widest))} mm",
                    "fewer turns",
                    "a smaller factor",
                ]
                : ["fewer turns", "a smaller factor", "a larger scroll"]
        );

    /// <summary>Widest on the outer turn, where the spiral is roomy.</summary>
    private static StrokeWidth Swell(Chain path, double width) => new(width, path.Length, 0.35);

    private Contour? Eye(Contour stroke)
    {
        var room = stroke.DistanceTo(Point.Origin) - FreeFormShape.UsualRidge;
        if (EyeRadius is not { } radius)
            return room >= 1
                ? new Circle(
                    Point.Origin,
                    Math.Min(room, Math.Max(1, UsualEye * Radius))
                ).ToContour()
                : null;
        if (radius > Math.Max(0, room + Tolerance.ForExtent(Radius).Merge))
            throw new PatternException(
                $"An eye of radius {Guard.Text(radius)} mm leaves no ridge of {Guard.Text(FreeFormShape.UsualRidge)} mm beside the stroke.",
                Point.Origin,
                room > 0
                    ?
                    [
                        $"a radius of at most {Guard.Text(FreeFormShape.Down(room))} mm",
                        "fewer turns",
                    ]
                    : ["no eye", "fewer turns"]
            );
        return radius > 0 ? new Circle(Point.Origin, radius).ToContour() : null;
    }

    /// <summary>Whether the turns keep a ridge between them.</summary>
    private bool LeavesRidge(Chain path, double width)
    {
        var swell = Swell(path, width);
        // Along the spiral the distance from the middle falls evenly, by the sine of its slant; one turn on it is Factor times
        // as much, and across the slant the gap between the two is smaller by its cosine.
        var slant = Math.Atan(-Math.Log(Factor) / Math.Tau);
        var end = Radius * Math.Pow(Factor, Turns);
        for (var i = 0; i <= Checks; i++)
        {
            var radius = Radius - i * (Radius - end) / Checks;
            var inner = radius * Factor;
            if (inner < end)
                break;
            var gap = (radius - inner) * Math.Cos(slant);
            if (gap < (WidthAt(radius) + WidthAt(inner)) / 2 + FreeFormShape.UsualRidge)
                return false;
        }
        return true;

        double WidthAt(double radius) =>
            swell.At(Math.Min((Radius - radius) / Math.Sin(slant), path.Length)).Width;
    }
}
