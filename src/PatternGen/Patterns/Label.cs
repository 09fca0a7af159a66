using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A line of text on the drawing, never carved; drawn with the library's own single-stroke alphabet.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Label
{
    /// <summary>Creates a label.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="at">Where the text starts, on its base line.</param>
    /// <param name="height">Height of a capital letter in mm. 2.5 is easy to read on paper.</param>
    /// <param name="turn">Direction of the base line; level by default.</param>
    /// <exception cref="ArgumentException">The text is empty or has more than one line.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The height is not positive.</exception>
    public Label(string text, Point at, double height, Angle turn = default)
    {
        if (string.IsNullOrWhiteSpace(text) || text.AsSpan().IndexOfAny('\r', '\n') >= 0)
            throw new ArgumentException("A label is one line of text, not empty.", nameof(text));
        Text = text;
        At = new Vertex(at).Point;
        Height = Guard.Positive(height);
        Turn = turn;
    }

    /// <summary>One line of text.</summary>
    public string Text { get; }

    /// <summary>Where the text starts, on its base line.</summary>
    public Point At { get; }

    /// <summary>Height of a capital letter in mm.</summary>
    public double Height { get; }

    /// <summary>Direction of the base line.</summary>
    public Angle Turn { get; }

    /// <summary>Returns the label where a transform takes it. A mirrored label stays readable: only its place and direction are mirrored.</summary>
    internal Label Transformed(Transform transform)
    {
        var direction = transform.Apply(Vector.Towards(Turn));
        return new(Text, transform.Apply(At), Height * transform.Scale, direction.Direction);
    }
}
