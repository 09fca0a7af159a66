using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A point of a stroke as <see cref="StrokeNotation"/> writes it.</summary>
/// <param name="At">Where it is.</param>
/// <param name="Heading">The direction of length 1 in which curves pass it, if one is written.</param>
/// <param name="IsCurved">Whether a curve leads to it from the point before.</param>
internal readonly record struct Knot(Point At, Vector? Heading, bool IsCurved)
{
    internal static Knot Parse(string word, bool isCurved)
    {
        var numbers = word.TrimEnd('n', 'e', 's', 'w')
            .Split(',', '@')
            .Select(number => double.Parse(number, CultureInfo.InvariantCulture))
            .ToArray();
        Vector? heading = word[^1] switch
        {
            'n' => new(0, 1),
            'e' => new(1, 0),
            's' => new(0, -1),
            'w' => new(-1, 0),
            _ when numbers is [_, _, var degrees] => Vector.Towards(Angle.FromDegrees(degrees)),
            _ => null,
        };
        return new(new(numbers[0], numbers[1]), heading, isCurved);
    }

    /// <summary>The direction from this point to another, of length 1.</summary>
    internal Vector Towards(Knot next) => (next.At - At).Unit();
}
