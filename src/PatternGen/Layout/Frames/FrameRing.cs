namespace PatternGen;

/// <summary>One of the bands of a frame: where it runs and how it is to be fitted.</summary>
/// <param name="Band">The band.</param>
/// <param name="From">Distance in mm from the outer edge to its lowest rule.</param>
/// <param name="Fitting">How each side is fitted.</param>
internal sealed record FrameRing(TriangleBand Band, double From, Fitting Fitting)
{
    /// <summary>Distance in mm from the outer edge to the highest rule.</summary>
    internal double To => From + Band.Height;

    /// <summary>Whether a side has to turn round at its middle to be its own mirror image.</summary>
    internal bool Leans => Band.Rows.Any(row => !row.IsUpright);
}
