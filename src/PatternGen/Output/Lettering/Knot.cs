using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A point of a stroke as <see cref="StrokeNotation"/> writes it.</summary>
/// <param name="At">Where it is.</param>
/// <param name="Heading">The direction of length 1 in which curves pass it, if one is written.</param>
/// <param name="IsCurved">Whether a curve leads to it from the point before.</param>
internal sealed record Knot(Point At, Vector? Heading, bool IsCurved)
{
    internal static Knot Parse(string word, bool isCurved)
    {
        var numbers = word.TrimEnd('n', 'e', 's', 'w').Split(',', '@');
        Vector? heading = word[^1] switch
        {
            'n' => new(0, 1),
            'e' => new(1, 0),
            's' => new(0, -1),
            'w' => new(-1, 0),
            _ when numbers.Length == 3 => Vector.Towards(Angle.FromDegrees(Number(numbers[2]))),
            _ => null,
        };
        return new(new(Number(numbers[0]), Number(numbers[1])), heading, isCurved);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>The direction from this point to another, of length 1.</summary>
    internal Vector Towards(Knot next) => (next.At - At).Unit();
}
