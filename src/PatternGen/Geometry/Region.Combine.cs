namespace PatternGen.Geometry;

public sealed partial class Region
{
    /// <inheritdoc cref="Union(IEnumerable{Region})"/>
    public Region Union(params Region[] others) => Union((IEnumerable<Region>)others);

    /// <summary>Returns what lies in this region or in any of the others.</summary>
    /// <param name="others">The other regions; none leaves this one.</param>
    /// <returns>
    /// A region whose arcs stay arcs. Two squares of side 2 that share a quarter have 7 mm². What is narrower than the merge
    /// distance of the tolerance is left out, and gaps as narrow are closed; parts that touch in a point stay parts.
    /// </returns>
    /// <exception cref="ArgumentNullException">There is no list, or an entry is null.</exception>
    /// <exception cref="PatternException">An outline crosses itself, so that its inside is not clear.</exception>
    public Region Union(IEnumerable<Region> others) =>
        Combined(others, (inFirst, inOthers, _) => inFirst + inOthers > 0);

    /// <inheritdoc cref="Intersection(IEnumerable{Region})"/>
    public Region Intersection(params Region[] others) => Intersection((IEnumerable<Region>)others);

    /// <summary>Returns what lies in this region and in all of the others.</summary>
    /// <param name="others">The other regions; none leaves this one.</param>
    /// <returns>As for <see cref="Union(IEnumerable{Region})"/>. Two circles of radius 1 whose centres are 1 apart share a lens of 1.22837 mm².</returns>
    /// <exception cref="ArgumentNullException">There is no list, or an entry is null.</exception>
    /// <exception cref="PatternException">An outline crosses itself, so that its inside is not clear.</exception>
    public Region Intersection(IEnumerable<Region> others) =>
        Combined(others, (inFirst, inOthers, count) => inFirst + inOthers == count);

    /// <inheritdoc cref="Difference(IEnumerable{Region})"/>
    public Region Difference(params Region[] others) => Difference((IEnumerable<Region>)others);

    /// <summary>Returns what lies in this region and in none of the others.</summary>
    /// <param name="others">The regions to take off; none leaves this one.</param>
    /// <returns>As for <see cref="Union(IEnumerable{Region})"/>. A square of side 2 less one that covers a quarter of it is an L of 3 mm².</returns>
    /// <exception cref="ArgumentNullException">There is no list, or an entry is null.</exception>
    /// <exception cref="PatternException">An outline crosses itself, so that its inside is not clear.</exception>
    public Region Difference(IEnumerable<Region> others) =>
        Combined(others, (inFirst, inOthers, _) => inFirst > 0 && inOthers <= 0);

    /// <inheritdoc cref="UnionOf(IEnumerable{Region})"/>
    public static Region UnionOf(params Region[] regions) => UnionOf((IEnumerable<Region>)regions);

    /// <summary>Returns what lies in any of the regions; none gives the empty region.</summary>
    /// <exception cref="ArgumentNullException">There is no list, or an entry is null.</exception>
    /// <exception cref="PatternException">An outline crosses itself, so that its inside is not clear.</exception>
    public static Region UnionOf(IEnumerable<Region> regions) => Empty.Union(regions);

    private Region Combined(IEnumerable<Region> others, RegionCombination.Keeps keeps)
    {
        Region[] operands =
        [
            this,
            .. Guard.NotNull(others).Select(region => Guard.NotNull(region, nameof(others))),
        ];
        // First of all, so that it does not hang on the others whether an outline is refused.
        foreach (var operand in operands)
            operand.ThrowIfCrossing("An outline that crosses itself has no clear inside.");
        return operands.Length == 1 ? this : RegionCombination.Of(operands, keeps);
    }
}
