namespace PatternGen;

/// <summary>How wide a stroke is along its way: it swells from a point, or starts at full width, and runs out to a point.</summary>
/// <param name="Width">Greatest width in mm.</param>
/// <param name="Length">Length of the way in mm.</param>
/// <param name="WidestAt">Where it is widest, as a share of the way; 0 for a stroke that starts so.</param>
internal readonly record struct StrokeWidth(double Width, double Length, double WidestAt)
{
    /// <summary>Where two parabolas meet with a common tangent.</summary>
    internal double Widest => WidestAt * Length;

    /// <summary>The width and how it changes per mm at a place along the way.</summary>
    internal (double Width, double Growth) At(double along)
    {
        var part = along < Widest ? Widest : Length - Widest;
        var off = (along - Widest) / part;
        return (Width * (1 - off * off), -2 * Width * off / part);
    }
}
