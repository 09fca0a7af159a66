using System.Globalization;

namespace PatternGen;

public partial class Wording
{
    /// <summary>What a compass drawing is called: <c>Compass drawing 80 × 80 mm</c>.</summary>
    /// <param name="width">Width of the figure in mm.</param>
    /// <param name="height">Height of the figure in mm.</param>
    public virtual string CompassDrawing(double width, double height) =>
        $"Compass drawing {Size(width, height)}";

    /// <summary>What of a compass drawing is carved: <c>Orbits 1 and 3, 41.5 % of the figure</c>.</summary>
    /// <param name="orbits">Numbers of the orbits of which parts are carved, in ascending order.</param>
    /// <param name="share">Share of the figure's area, from 0 to 1.</param>
    public virtual string Carved(IReadOnlyList<int> orbits, double share)
    {
        var numbers = orbits.Select(orbit => orbit.ToString(CultureInfo.InvariantCulture));
        var what =
            orbits.Count == 1
                ? $"Orbit {numbers.First()}"
                : $"Orbits {string.Join(", ", numbers.SkipLast(1))} and {numbers.Last()}";
        return $"{what}, {Number(100 * share, 1)} % of the figure";
    }

    /// <summary>What the key of a compass drawing is called: <c>Compass drawing 80 × 80 mm, orbits numbered</c>.</summary>
    /// <param name="drawing">What the drawing is called.</param>
    public virtual string Key(string drawing) => $"{drawing}, orbits numbered";
}
