using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A tapered stroke: one chip that swells along a line and runs out to a point.</summary>
/// <remarks>
/// <para>
/// It runs out to a point of 2 atan(width / length of the taper): 4 mm wide in the middle of 46 mm, 19.7 degrees. The point
/// of a long one is finer than the 12 degrees under which the inspection warns of a sharp tip. A carver lets the knife rise
/// out of the wood there, and lifts it where the line has become as fine as the grain allows; a round head, a leaf on the
/// tip, or a shorter taper (<see cref="WithWidestAt"/>) does without.
/// </para>
/// <para>Each method returns a changed copy. Immutable and safe to share between threads.</para>
/// </remarks>
public sealed class Stroke : Pattern
{
    private const double LeastShare = 0.1;

    /// <summary>Halvings of the search for the widest stroke that works, each of which draws one: to a part in a thousand.</summary>
    private const int SearchSteps = 10;

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
    /// <param name="path">The line along its middle; it bends smoothly and does not cross itself. A free curve gives one: <c>FreeCurve.Through(…).ToChain()</c>.</param>
    /// <param name="width">Where it is widest, in mm.</param>
    /// <remarks>
    /// Its sides follow their true curves to 0.01 mm. A line with corners, or that crosses itself, is refused with a
    /// <see cref="PatternException"/> once the stroke is drawn, and so is a stroke too wide for the bends of its line.
    /// </remarks>
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
        RefuseCorners();
        if (Path.CrossesItself())
            throw new PatternException(
                "A stroke can't follow a line that crosses itself: its sides would cross too.",
                Path.Start,
                ["a line that does not cross itself", "several strokes, with a gap between them"]
            );
        var shape = Shape(1);
        if (FreeFormShape.IsSound(shape))
            return shape;
        var works = FreeFormShape.LargestShare(
            share => FreeFormShape.IsSound(Shape(share)),
            SearchSteps
        );
        var width = FreeFormShape.Down(Width * works);
        throw new PatternException(
            $"A stroke {Guard.Text(Width)} mm wide can't follow this line: its sides would cross.",
            Path.PointAt(WidestAt * Path.Length),
            width > 0
                ? [$"a width of at most {Guard.Text(width)} mm", "a line with wider bends"]
                : ["a line with wider bends"]
        );
    }

    /// <summary>Refuses a corner at which the sides would jump by more than they may lie off their curves.</summary>
    private void RefuseCorners()
    {
        for (var i = 1; i < Path.Count; i++)
        {
            var (before, after) = (Path.At(i - 1), Path.At(i));
            if (before.Length == 0 || after.Length == 0)
                continue;
            var turn = Math.Abs(
                SmoothRun.Angle(before.TangentAt(before.Length), after.TangentAt(0))
            );
            if (turn * Width / 2 > FreeFormShape.Accuracy)
                throw new PatternException(
                    $"A stroke {Guard.Text(Width)} mm wide can't turn the corner of this line, by {Guard.Text(double.RadiansToDegrees(turn))} degrees.",
                    after.Start,
                    [
                        "a line that bends smoothly there, such as FreeCurve.Through(…).ToChain()",
                        "a stroke of its own on each side of the corner",
                    ]
                );
        }
    }
}
