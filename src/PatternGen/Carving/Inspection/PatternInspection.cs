using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Judges whether a pattern can be carved.</summary>
public static class PatternInspection
{
    /// <summary>Returns what common practice would say against carving a pattern as drawn, with what would clear it.</summary>
    /// <remarks>
    /// <para>
    /// Distances between chips are exact for lines and arcs. Sides that chips share, whole or in part, are knife-sharp
    /// ridges, and chips that touch in a corner are tips that meet: both are fine. A chip's width is that of the largest
    /// circle in it. Where the pattern does not say where its wood ends, its edges are not looked at; line cuts are not
    /// looked at. The work grows with the number of chips; what is alike of repeats is worked out once.
    /// </para>
    /// <para>
    /// A bit is taken to cut every chip; those that it cannot cut, because they are stab-cut or have a wall angle of their own,
    /// <see cref="PatternGrooves.GroovePaths"/> names and refuses.
    /// </para>
    /// <para>
    /// The limits are common practice and no guarantee: test on scrap. Safe for several threads at once.
    /// </para>
    /// </remarks>
    /// <param name="pattern">The pattern.</param>
    /// <param name="cutter">What its chips are cut with.</param>
    /// <param name="stock">The wood.</param>
    /// <param name="limits">What it is held against; <see cref="InspectionLimits.Default"/> if not given.</param>
    /// <param name="wording">The words of the findings; English by default.</param>
    /// <returns>Of two-sided chips 10 mm wide, cut at 65 degrees in wood 12 mm thick, that their floor of 1.3 mm is too thin.</returns>
    [Pure]
    public static InspectionReport Inspect(
        this Pattern pattern,
        Cutter cutter,
        Stock stock,
        InspectionLimits? limits = null,
        Wording? wording = null
    )
    {
        Guard.NotNull(pattern);
        Guard.NotNull(cutter);
        Guard.NotNull(stock);
        var words = wording ?? Wording.English;
        var layout = ChipLayout.Of(pattern, stock);
        var job = new InspectionJob(layout, cutter, stock, limits ?? InspectionLimits.Default);
        job.Run();
        var writer = new FindingWriter(job, words);
        return new(
            pattern,
            [.. FindingGroups.Of(job).Select(writer.Write)],
            new SuggestionFinder(job, pattern, words).Find,
            words
        );
    }
}
