namespace PatternGen;

/// <summary>How a row that is shifted by half a pitch ends.</summary>
public enum StaggeredEnds
{
    /// <summary>With a gap of half a pitch at each end, so one chip fewer than the rows in step; ends alike. The default.</summary>
    HalfGaps,

    /// <summary>With half a chip at each end, cut off upright.</summary>
    HalfChips,

    /// <summary>With as many whole chips as the rows in step, which end half a pitch earlier; the band is half a pitch longer.</summary>
    Shifted,
}
