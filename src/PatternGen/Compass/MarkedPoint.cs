using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A point of a compass drawing with the letter or number that stands beside it.</summary>
/// <remarks>Single points have letters, A first; points of a round have numbers. Immutable and safe to share between threads.</remarks>
public sealed class MarkedPoint
{
    internal MarkedPoint(string label, Point point)
    {
        Label = label;
        Point = point;
    }

    /// <summary>Its letter or number: <c>A</c>, <c>12</c>. No two points of a drawing have the same.</summary>
    public string Label { get; }

    /// <summary>Where it lies.</summary>
    public Point Point { get; }

    /// <summary>Returns label and place, for messages: <c>A (0, 0)</c>.</summary>
    public override string ToString() => $"{Label} {Point}";
}
