namespace PatternGen;

/// <summary>Where an element's coordinates lie in the drawing, and what single floats may have moved them by.</summary>
/// <param name="Map">From the element's coordinates to millimetres, y up.</param>
/// <param name="Share">Rounding of the map, as a share of a coordinate.</param>
/// <param name="Shift">Rounding of where the map moves to, in mm.</param>
internal readonly record struct SvgFrame(Affine Map, double Share, double Shift)
{
    /// <summary>Half of the last digit of a single float, as a share of the number.</summary>
    internal const double Digit = 1.0 / (1 << 24);

    /// <summary>Returns the frame inside a map whose numbers are single floats.</summary>
    /// <param name="map">The map.</param>
    /// <param name="share">Rounding of its turning and stretching, as a share of a coordinate.</param>
    /// <param name="reach">The largest number in what it moves by.</param>
    internal SvgFrame Within(Affine map, double share, double reach) =>
        new(Map * map, Share + share, Shift + (Digit + share) * reach * Map.Stretch);

    /// <summary>How far rounding may have moved what has coordinates up to a size, along either axis, in mm.</summary>
    internal double Rounding(double size)
    {
        // A single float has 24 digits from its leading one on.
        var digit = size > 0 ? Math.ScaleB(Digit, Math.ILogB(size)) : 0;
        return (digit + Share * size) * Map.Stretch + Shift;
    }
}
