using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One character as the pen draws it, in hundredths of the cap height; the baseline is y = 0.</summary>
/// <param name="Strokes">What the pen draws.</param>
/// <param name="Left">The x at which the left margin ends.</param>
/// <param name="Right">The x at which the right margin begins.</param>
/// <param name="Advance">How far the next character stands to the right of this one.</param>
/// <param name="Axis">The x that accents are centred on.</param>
internal sealed record Glyph(
    IReadOnlyList<Chain> Strokes,
    double Left,
    double Right,
    double Advance,
    double Axis
)
{
    /// <summary>The cap height.</summary>
    internal const double CapHeight = 100;

    /// <summary>Returns a character that leaves a gap and draws nothing.</summary>
    internal static Glyph Blank(double advance) => new([], 0, advance, advance, advance / 2);

    /// <summary>The smallest upright rectangle that holds the strokes.</summary>
    internal Extents Extents =>
        Strokes.Select(stroke => stroke.Extents).Aggregate((all, stroke) => all.Including(stroke));

    /// <summary>Returns this character with more strokes, moved to the right by x and up by y; it keeps its width.</summary>
    internal Glyph With(IEnumerable<Chain> strokes, double x, double y)
    {
        var move = Transform.Move(x, y);
        return this with
        {
            Strokes = [.. Strokes, .. strokes.Select(stroke => stroke.Transformed(move))],
        };
    }

    /// <summary>Returns this character at another size, standing at a height above the baseline.</summary>
    internal Glyph Sized(double scale, double baseline)
    {
        var transform = Transform.Resize(scale).Then(Transform.Move(0, baseline));
        return new(
            [.. Strokes.Select(stroke => stroke.Transformed(transform))],
            Left * scale,
            Right * scale,
            Advance * scale,
            Axis * scale
        );
    }

    /// <summary>Returns this character and another on its right as one.</summary>
    internal Glyph Then(Glyph next)
    {
        var moved = next.Widened(Advance, 0);
        return moved with { Strokes = [.. Strokes, .. moved.Strokes], Left = Left };
    }

    /// <summary>Returns this character moved to the right, in a space as much wider as is asked for.</summary>
    internal Glyph Widened(double left, double right) =>
        new(
            [.. Strokes.Select(stroke => stroke.Transformed(Transform.Move(left, 0)))],
            Left + left,
            Right + left,
            Advance + left + right,
            Axis + left
        );
}
