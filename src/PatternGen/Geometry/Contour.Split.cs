namespace PatternGen.Geometry;

public sealed partial class Contour
{
    /// <summary>Returns the open parts between the given places, in order along the ring; the first one starts at the smallest place.</summary>
    /// <param name="lengths">Distances from the first corner in mm; beyond the ends the ring goes round again. At least one.</param>
    /// <returns>As many chains as there are separate places: one place opens the ring there.</returns>
    /// <exception cref="ArgumentException">No place is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A place is not finite.</exception>
    public IReadOnlyList<Chain> SplitAt(params double[] lengths)
    {
        var places = Distinct(lengths);
        // The ring's end is its start.
        if (places.Count > 1 && places[0] + Length - places[^1] <= Tolerance.Merge)
            places.RemoveAt(places.Count - 1);
        if (places.Count == 0)
            throw new ArgumentException(
                "A contour is split at one place at least.",
                nameof(lengths)
            );
        var parts = new Chain[places.Count];
        for (var i = 0; i < parts.Length; i++)
            parts[i] = Part(places[i], places[(i + 1) % parts.Length]);
        return parts;
    }
}
