namespace PatternGen;

/// <summary>How a band is fitted between two mitres, in numbers.</summary>
/// <param name="Length">Length between the mitres on the line that is divided, in mm.</param>
/// <param name="Parts">1, or 2 beside a centre motif.</param>
/// <param name="Repeats">Repeats in each part.</param>
/// <param name="Pitch">Length of one repeat in mm.</param>
/// <param name="Asked">The pitch aimed at, in mm.</param>
/// <param name="Phase">What lies on the mitre there: 0 for the place where two repeats meet, 1 for the middle of a repeat.</param>
internal sealed record MitredFit(
    double Length,
    int Parts,
    int Repeats,
    double Pitch,
    double Asked,
    int Phase
)
{
    /// <summary>Half pitches from a mitre to the middle of the side, or to its centre motif.</summary>
    internal int Halves => Parts == 1 ? Repeats : 2 * Repeats;

    /// <summary>Length left free in the middle, in mm; rounding is none.</summary>
    internal double MiddleGap
    {
        get
        {
            var gap = Length - Halves * Pitch;
            return gap > Geometry.Tolerance.ForExtent(Length).Merge ? gap : 0;
        }
    }
}
