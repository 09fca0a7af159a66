using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A leaf: a chip of two curved sides from stalk to tip, or two chips with a vein left standing between them.</summary>
/// <remarks>
/// The stalk is at the origin and the tip to the right of it, on the x axis. Each method returns a changed copy. Immutable
/// and safe to share between threads.
/// </remarks>
public sealed class Leaf : Pattern
{
    private const double LeastShare = 0.15;
    private const double MostBend = 170;

    private Leaf(double length, double width)
    {
        Length = length;
        Width = width;
    }

    private Leaf(Leaf other)
        : this(other.Length, other.Width)
    {
        Bend = other.Bend;
        WidestAt = other.WidestAt;
        Vein = other.Vein;
    }

    /// <summary>From stalk to tip in a straight line, in mm.</summary>
    public double Length { get; }

    /// <summary>Over all where it is widest, in mm, square to the midrib.</summary>
    public double Width { get; }

    /// <summary>How far the leaf turns from stalk to tip in degrees, positive to the left, counter-clockwise. Default 0: straight.</summary>
    public double Bend { get; private init; }

    /// <summary>Where it is widest, as a share of the way from stalk to tip. Default 0.5, the middle.</summary>
    public double WidestAt { get; private init; } = 0.5;

    /// <summary>Width in mm of the vein that stays standing along the midrib, where the leaf is widest; 0 for a ridge as sharp as a knife; null, the default, for a leaf without a vein.</summary>
    public double? Vein { get; private init; }

    /// <summary>Returns a straight leaf without a vein.</summary>
    /// <param name="length">From stalk to tip in mm.</param>
    /// <param name="width">Where it is widest, in mm; at most the length. <c>Leaf.Of(14, 5)</c> has sides of radius 11.05 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive, or the leaf is wider than long.</exception>
    public static Leaf Of(double length, double width)
    {
        Guard.Positive(length);
        return new(length, Guard.Within(Guard.Positive(width), 0, length, nameof(width)));
    }

    /// <summary>Returns the leaf bent to one side, as if its midrib were an arc.</summary>
    /// <param name="degrees">How far it turns from stalk to tip, -170 to 170; positive to the left.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public Leaf Bent(double degrees) =>
        new(this) { Bend = Guard.Within(degrees, -MostBend, MostBend) };

    /// <summary>Returns the leaf with its greatest width nearer to the stalk or to the tip.</summary>
    /// <param name="share">Of the way from stalk to tip, 0.15 to 0.85.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public Leaf WithWidestAt(double share) =>
        new(this) { WidestAt = Guard.Within(share, LeastShare, 1 - LeastShare) };

    /// <summary>Returns the leaf as two chips with a vein left standing between them, which runs out at both ends.</summary>
    /// <param name="width">Width of the vein where the leaf is widest, in mm; 0, the default, for a ridge as sharp as a knife.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is negative, or as wide as the leaf.</exception>
    [Pure]
    public Leaf WithVein(double width = 0)
    {
        if (!(width >= 0 && width < Width))
            Guard.Throw(
                nameof(width),
                nameof(width),
                width,
                $"must be 0 or more and under the width of the leaf, {Guard.Text(Width)} mm"
            );
        return new(this) { Vein = width };
    }

    /// <summary>Returns the leaf in one piece.</summary>
    [Pure]
    public Leaf WithoutVein() => new(this) { Vein = null };

    internal override IEnumerable<string> Facts(Wording words) => [words.Leaf(Length, Width)];

    private protected override PatternNode Draw()
    {
        if (Vein is not { } vein)
            return FreeFormShape.Row(Outline);
        return FreeFormShape.Row(
            LeafSide.Between(Side(vein / 2), Side(Width / 2)),
            LeafSide.Between(Side(-Width / 2), Side(-vein / 2))
        );
    }

    /// <summary>The outline of the whole leaf, its vein included.</summary>
    internal Contour Outline => LeafSide.Between(Side(-Width / 2), Side(Width / 2));

    private Segment Midrib =>
        new(Point.Origin, new(Length, 0), Math.Tan(double.DegreesToRadians(Bend) / 4));

    /// <summary>A vein without width is the midrib itself, whatever its shape.</summary>
    private IReadOnlyList<Segment> Side(double offset) =>
        offset == 0 ? [Midrib] : LeafSide.Of(Midrib, offset, WidestAt);
}
