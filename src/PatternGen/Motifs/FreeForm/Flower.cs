using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A flower seen from above: petals round a centre, apart from each other or each lying over the next.</summary>
/// <remarks>
/// Its centre is at the origin, and a petal points straight up. Each method returns a changed copy. Immutable and safe to
/// share between threads.
/// </remarks>
public sealed partial class Flower : Pattern
{
    /// <summary>Fewest petals that go round a centre.</summary>
    private const int Fewest = 3;

    /// <summary>Most petals; of more, none is wide enough to cut.</summary>
    private const int Most = 24;

    /// <summary>Radius of the centre as a share of the flower's.</summary>
    private const double UsualCentre = 0.2;

    private Flower(int petals, double radius)
    {
        Petals = petals;
        Radius = radius;
        CentreRadius = UsualCentre * radius;
    }

    private Flower(Flower other)
        : this(other.Petals, other.Radius)
    {
        CentreRadius = other.CentreRadius;
        IsCentreCarved = other.IsCentreCarved;
        IsOverlapping = other.IsOverlapping;
        Ridge = other.Ridge;
        PetalWidth = other.PetalWidth;
    }

    /// <summary>Number of petals.</summary>
    public int Petals { get; }

    /// <summary>From the centre to the ends of the petals, in mm.</summary>
    public double Radius { get; }

    /// <summary>Radius in mm of the disc in the middle, which the petals keep a ridge away from. Default a fifth of the flower's.</summary>
    public double CentreRadius { get; private init; }

    /// <summary>Whether the disc in the middle is a round chip. Default no: it stays standing.</summary>
    public bool IsCentreCarved { get; private init; }

    /// <summary>Whether each petal lies over the next, clockwise. Default no: they are apart.</summary>
    public bool IsOverlapping { get; private init; }

    /// <summary>Wood left between petals, and between them and the centre, in mm. Default 1.2: common practice, no source.</summary>
    public double Ridge { get; private init; } = FreeFormShape.UsualRidge;

    /// <summary>Width of a petal in mm; null, the default, for petals as wide as there is room, or wide enough to overlap.</summary>
    public double? PetalWidth { get; private init; }

    /// <summary>Returns a flower of separate petals round a centre that stays standing.</summary>
    /// <param name="petals">Number of petals, 3 to 24.</param>
    /// <param name="radius">From the centre to the ends of the petals, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static Flower Of(int petals, double radius) =>
        new(Guard.Within(petals, Fewest, Most), Guard.Positive(radius));

    /// <summary>Returns the flower with petals that each lie over the next, clockwise, with a ridge between them.</summary>
    [Pure]
    public Flower Overlapping() => new(this) { IsOverlapping = true };

    /// <summary>Returns the flower with petals apart from each other.</summary>
    [Pure]
    public Flower Separate() => new(this) { IsOverlapping = false };

    /// <summary>Returns the flower with petals of a given width.</summary>
    /// <param name="width">In mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not positive.</exception>
    [Pure]
    public Flower WithPetalWidth(double width) => new(this) { PetalWidth = Guard.Positive(width) };

    /// <summary>Returns the flower with another ridge between its petals.</summary>
    /// <param name="width">In mm, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [Pure]
    public Flower WithRidge(double width) => new(this) { Ridge = Guard.NotNegative(width) };

    /// <summary>Returns the flower with a disc of another size in the middle, which stays standing.</summary>
    /// <param name="radius">In mm, 0 for none, at most 0.6 of the flower's.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public Flower WithCentre(double radius) =>
        new(this) { CentreRadius = Guard.Within(radius, 0, 0.6 * Radius), IsCentreCarved = false };

    /// <summary>Returns the flower with a round chip in the middle.</summary>
    /// <param name="radius">In mm; if not given, that of the disc so far.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not positive, or more than 0.6 of the flower's.</exception>
    [Pure]
    public Flower WithCarvedCentre(double? radius = null) =>
        new(this)
        {
            CentreRadius = Guard.Within(
                Guard.Positive(radius ?? CentreRadius, nameof(radius)),
                0,
                0.6 * Radius,
                nameof(radius)
            ),
            IsCentreCarved = true,
        };

    internal override IEnumerable<string> Facts(Wording words) => [words.Flower(Petals, Radius)];

    /// <summary>Where the petals begin: a ridge away from the disc, and where their tips are a ridge apart.</summary>
    private double PetalStart =>
        Math.Max(CentreRadius > 0 ? CentreRadius + Ridge : 0, Ridge / (2 * Math.Sin(HalfAngle)));

    /// <summary>Half of the angle that a petal has for itself.</summary>
    private double HalfAngle => Math.PI / Petals;

    private protected override PatternNode Draw()
    {
        RefuseNoRoom();
        var petal = FreeFormShape.Row(IsOverlapping ? OverlappingPetal() : SeparatePetal());
        // Counter-clockwise from the one that points up; all share one shape.
        var nodes = Enumerable
            .Range(0, Petals)
            .Select(i =>
                (PatternNode)
                    new PlacedNode(petal, Transform.Rotate(Angle.OfTurn(0.25 + (double)i / Petals)))
            );
        var round = GroupNode.InSameRows(nodes);
        return IsCentreCarved
            ? GroupNode.Of(
                round,
                FreeFormShape.Row(new Circle(Point.Origin, CentreRadius).ToContour())
            )
            : round;
    }

    private void RefuseNoRoom()
    {
        if (PetalStart >= 0.9 * Radius)
            throw new PatternException(
                $"A centre of {Guard.Text(CentreRadius)} mm and a ridge of {Guard.Text(Ridge)} mm leave no room for petals in a flower of radius {Guard.Text(Radius)} mm.",
                new(PetalStart, 0),
                ["a smaller centre", "a narrower ridge", "a larger flower"]
            );
    }
}
