namespace PatternGen;

/// <summary>Where the parts of a fitted band lie, in numbers: what the drawing needs and what the fit says.</summary>
/// <param name="Fit">The fit in words and figures.</param>
/// <param name="Parts">The stations of each part, from left to right.</param>
/// <param name="HasExtraHalf">Whether staggered rows are shifted, which takes half a pitch more.</param>
internal sealed record BandPlan(Fit Fit, IReadOnlyList<Stations> Parts, bool HasExtraHalf)
{
    /// <summary>Middle of the carved length, in mm from the left shoulder.</summary>
    internal double Middle => (Parts[0].Start + Parts[^1].End) / 2;
}
