using System.Globalization;

namespace PatternGen;

public partial class Wording
{
    /// <summary>What a compass drawing is called: <c>Compass drawing 80 × 80 mm</c>.</summary>
    /// <param name="width">Width of the figure in mm.</param>
    /// <param name="height">Height of the figure in mm.</param>
    public virtual string CompassDrawing(double width, double height) =>
        $"Compass drawing {Size(width, height)}";

    /// <summary>What of a compass drawing is carved: <c>Orbit 1, 1 of 12 parts of orbit 2, 41.5 % of the figure</c>.</summary>
    /// <param name="orbits">What is carved of each orbit, in words, in ascending order.</param>
    /// <param name="share">Share of the figure's area, from 0 to 1.</param>
    public virtual string Carved(IReadOnlyList<string> orbits, double share)
    {
        var what = string.Join(", ", orbits);
        return $"{char.ToUpperInvariant(what[0])}{what[1..]}, {Number(100 * share, 1)} % of the figure";
    }

    /// <summary>What is carved of an orbit: <c>orbit 2</c>, or <c>1 of 12 parts of orbit 2</c>.</summary>
    /// <param name="orbit">Its number in the key.</param>
    /// <param name="carved">How many of its parts are carved.</param>
    /// <param name="parts">How many it has.</param>
    public virtual string CarvedOfOrbit(int orbit, int carved, int parts)
    {
        var name = $"orbit {orbit.ToString(CultureInfo.InvariantCulture)}";
        return carved == parts ? name : $"{carved} of {parts} parts of {name}";
    }

    /// <summary>What the key of a compass drawing is called: <c>Compass drawing 80 × 80 mm, orbits numbered</c>.</summary>
    /// <param name="drawing">What the drawing is called.</param>
    public virtual string Key(string drawing) => $"{drawing}, orbits numbered";

    /// <summary>What the key of a set of designs is called: <c>Compass drawing 80 × 80 mm, numbered as the designs are</c>.</summary>
    /// <param name="drawing">What the drawing is called.</param>
    public virtual string KeyOfDesigns(string drawing) => $"{drawing}, numbered as the designs are";
}
