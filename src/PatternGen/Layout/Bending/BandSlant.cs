namespace PatternGen;

/// <summary>A straight slanted side of the chips of a row.</summary>
/// <param name="Low">y of its lower end.</param>
/// <param name="High">y of its upper end.</param>
/// <param name="Share">How far it runs along the band, as a share of the base.</param>
/// <param name="Gap">By how much the base is shorter than a repeat, in mm.</param>
internal sealed record BandSlant(double Low, double High, double Share, double Gap)
{
    /// <summary>Share by which an edge must be cleared: so far the arithmetic may be off.</summary>
    private const double Noise = 1e-9;

    /// <summary>The slanted sides of a row that stay straight on a bent band.</summary>
    internal static IEnumerable<BandSlant> Of(TriangleRow row, TriangleBand band)
    {
        var (low, high) = (band.Rules[row.LowerRule], band.Rules[row.UpperRule]);
        if (row.LeftSagitta == 0)
            yield return new(low, high, (1 + row.Lean) / 2, row.Gap);
        if (row.RightSagitta == 0)
            yield return new(low, high, (1 - row.Lean) / 2, row.Gap);
    }

    /// <summary>How far it runs along a band of the given pitch.</summary>
    internal double Along(double pitch) => Math.Max(0, pitch - Gap) * Share;

    /// <summary>
    /// Whether the chord between two concentric circles keeps outside the inner one: seen from the centre, the outer end
    /// stays beyond the tangent at the inner end.
    /// </summary>
    /// <param name="one">Radius at one end.</param>
    /// <param name="other">Radius at the other.</param>
    /// <param name="angle">Angle between the ends, in radians.</param>
    internal bool StaysInStrip(double one, double other, double angle) =>
        angle < Math.PI / 2
        && Math.Max(one, other) * Math.Cos(angle) > Math.Min(one, other) * (1 + Noise);
}
