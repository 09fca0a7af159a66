using System.Globalization;

namespace PatternGen.Geometry;

/// <summary>One curve of a drawing: a straight line, an arc, or a whole circle.</summary>
/// <remarks>
/// Segments and circles turn into curves by themselves. Immutable and safe to share between threads. Equality is exact.
/// The default value is the empty line at the origin.
/// </remarks>
public readonly record struct Curve
{
    private readonly Segment _segment;
    private readonly Circle _circle;

    /// <summary>Creates a curve that is a line or an arc.</summary>
    public Curve(Segment segment) => _segment = segment;

    /// <summary>Creates a curve that is a whole circle.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The circle is the default value, a point.</exception>
    public Curve(Circle circle)
    {
        Guard.Positive(circle.Radius, "circle.Radius");
        _circle = circle;
    }

    /// <summary>Whether this is a whole circle, not a line or an arc.</summary>
    public bool IsCircle => _circle.Radius > 0;

    /// <summary>The line or arc.</summary>
    /// <exception cref="InvalidOperationException">It is a whole circle.</exception>
    public Segment Segment =>
        IsCircle
            ? throw new InvalidOperationException(
                $"The curve is a whole circle round {_circle.Centre}, so it has no ends; ask IsCircle first."
            )
            : _segment;

    /// <summary>The whole circle.</summary>
    /// <exception cref="InvalidOperationException">It is a line or an arc.</exception>
    public Circle Circle =>
        IsCircle
            ? _circle
            : throw new InvalidOperationException(
                $"The curve is the segment {_segment}, not a whole circle; ask IsCircle first."
            );

    /// <summary>The smallest upright rectangle that holds the curve.</summary>
    public Extents Extents => IsCircle ? _circle.Extents : _segment.Extents;

    /// <summary>Length in mm.</summary>
    public double Length => IsCircle ? _circle.Length : _segment.Length;

    /// <summary>The curve as a run of segments; a whole circle as two half circles.</summary>
    internal IEnumerable<Segment> Segments => IsCircle ? _circle.ToContour().Segments : [_segment];

    /// <summary>Returns the curve moved, turned, mirrored or scaled.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The transform takes it beyond 2 km.</exception>
    public Curve Transformed(Transform transform) =>
        IsCircle ? new(_circle.Transformed(transform)) : new(_segment.Transformed(transform));

    /// <summary>Says where the curve lies, such as "(0, 0) to (10, 0)" or "circle round (0, 0) of radius 5".</summary>
    public override string ToString() =>
        IsCircle
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"circle round {_circle.Centre} of radius {_circle.Radius:0.######}"
            )
            : _segment.ToString();

    /// <summary>A segment is a curve.</summary>
    public static implicit operator Curve(Segment segment) => new(segment);

    /// <summary>A circle is a curve.</summary>
    public static implicit operator Curve(Circle circle) => new(circle);
}
