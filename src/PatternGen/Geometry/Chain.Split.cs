namespace PatternGen.Geometry;

public sealed partial class Chain
{
    /// <summary>Returns the parts between the given places, in order; the first starts where this chain starts.</summary>
    /// <param name="lengths">Distances from the start in mm. Places at the ends split nothing off.</param>
    /// <returns>One chain more than there are separate places between the ends.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A place does not lie on the chain.</exception>
    public IReadOnlyList<Chain> SplitAt(params double[] lengths)
    {
        var total = Length;
        var merge = Tolerance.Merge;
        var places = Distinct(
            Guard.NotNull(lengths).Select(length => Guard.Within(length, 0, total))
        );
        places.RemoveAll(place => place <= merge || place >= total - merge);
        var parts = new Chain[places.Count + 1];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = Part(i == 0 ? 0 : places[i - 1], i == places.Count ? total : places[i]);
        return parts;
    }
}
