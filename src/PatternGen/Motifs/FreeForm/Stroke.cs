using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A tapered stroke: one chip that swells along a line and runs out to a point.</summary>
/// <remarks>Each method returns a changed copy. Immutable and safe to share between threads.</remarks>
public sealed class Stroke : Pattern
{
    private const double LeastShare = 0.1;

    private readonly Lazy<Contour> _outline;

    private Stroke(Chain path, double width)
    {
        Path = path;
        Width = width;
        _outline = new(SoundShape);
    }

    private Stroke(Stroke other)
        : this(other.Path, other.Width) => WidestAt = other.WidestAt;

    /// <summary>The line along its middle.</summary>
    public Chain Path { get; }

    /// <summary>Over all where it is widest, in mm.</summary>
    public double Width { get; }

    /// <summary>Where it is widest, as a share of its length; 0 for a round head at its start. Default 0.5, the middle.</summary>
    public double WidestAt { get; private init; } = 0.5;

    /// <summary>Returns a straight stroke, pointed at both ends, from the origin to the right.</summary>
    /// <param name="length">In mm.</param>
    /// <param name="width">Where it is widest, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive.</exception>
    public static Stroke Of(double length, double width) =>
        Along(Chain.Line(Point.Origin, new(Guard.Positive(length), 0)), width);

    /// <summary>Returns a stroke along a line, pointed at both ends.</summary>
    /// <param name="path">The line along its middle; it should bend smoothly. A free curve gives one: <c>FreeCurve.Through(…).ToChain()</c>.</param>
    /// <param name="width">Where it is widest, in mm.</param>
    /// <remarks>Its sides follow their true curves to 0.01 mm.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The width is not positive.</exception>
    public static Stroke Along(Chain path, double width) =>
        new(Guard.NotNull(path), Guard.Positive(width));

    /// <summary>Returns the stroke with its greatest width nearer to the start or to the end.</summary>
    /// <param name="share">Of its length, 0.1 to 0.9.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public Stroke WithWidestAt(double share) =>
        new(this) { WidestAt = Guard.Within(share, LeastShare, 1 - LeastShare) };

    /// <summary>Returns the stroke with a round head: a half circle as wide as the stroke before its start, from where it only gets narrower.</summary>
    [Pure]
    public Stroke WithRoundHead() => new(this) { WidestAt = 0 };

    internal override IEnumerable<string> Facts(Wording words) =>
        [words.Stroke(Path.Length, Width)];

    /// <summary>The outline of its chip.</summary>
    /// <exception cref="PatternException">The line bends too sharply for the width.</exception>
    internal Contour Outline => _outline.Value;

    private protected override PatternNode Draw() => FreeFormShape.Row(Outline);

    private Contour Shape(double share) =>
        StrokeOutline.Of(Path, new(Width * share, Path.Length, WidestAt));

    private Contour SoundShape()
    {
        var shape = Shape(1);
        if (FreeFormShape.IsSound(shape))
            return shape;
        var works = FreeFormShape.LargestShare(share => FreeFormShape.IsSound(Shape(share)));
        throw new PatternException(
            $"A stroke {Guard.Text(Width)} mm wide can't follow this line: its sides would cross.",
            Path.PointAt(WidestAt * Path.Length),
            [
                $"a width of at most {FreeFormShape.Down(Width * works)} mm",
                "a line with wider bends",
            ]
        );
    }
}
