using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds which stretches of a section lie on wood.</summary>
internal static class SectionWood
{
    /// <exception cref="PatternException">None does.</exception>
    internal static IReadOnlyList<(double Start, double End)> Of(Pattern pattern, SectionLine line)
    {
        var outlines = pattern.Stock;
        // Without an outline all is wood.
        if (outlines.Count == 0)
            return [(0, line.Length)];
        var places = new List<double> { 0, line.Length };
        foreach (var outline in outlines)
            line.AddCrossings(places, outline);
        var sorted = line.Sorted(places);
        var stretches = new List<(double Start, double End)>();
        for (var i = 0; i + 1 < sorted.Count; i++)
        {
            var middle = line.At(0.5 * (sorted[i] + sorted[i + 1]));
            if (outlines.Sum(outline => Winding.Of(outline, middle)) <= 0)
                continue;
            // Where outlines of two pieces touch, the wood goes on.
            if (stretches.Count > 0 && stretches[^1].End == sorted[i])
                stretches[^1] = (stretches[^1].Start, sorted[i + 1]);
            else
                stretches.Add((sorted[i], sorted[i + 1]));
        }
        if (stretches.Count > 0)
            return stretches;
        var centre = outlines[0].Extents.Centre;
        throw new PatternException(
            $"The section from {line.From} to {line.To} does not meet the wood.",
            line.From,
            [$"a line over the outline of the wood, such as one through {centre}"]
        );
    }
}
