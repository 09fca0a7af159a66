using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How a band is bent.</summary>
/// <param name="Sides">What becomes of straight slanted sides.</param>
/// <param name="Accuracy">How far a fitted side may be off, in mm.</param>
/// <param name="PitchLine">Where lengths along the band are measured.</param>
internal sealed record BentStyle(BentSides Sides, double Accuracy, BandLine PitchLine)
{
    internal static BentStyle Default { get; } = new(BentSides.Straight, 0.01, BandLine.Middle);

    /// <summary>Returns the style with other sides.</summary>
    internal BentStyle With(BentSides sides, double accuracy) =>
        this with
        {
            Sides = Guard.Defined(sides),
            Accuracy = Checked(accuracy),
        };

    /// <summary>An accuracy in mm: finer than a wavelength of light no knife is, and coarser than a millimetre no eye.</summary>
    internal static double Checked(double accuracy) => Guard.Within(accuracy, 1e-6, 1);

    /// <summary>Where a band lies beside a path.</summary>
    /// <param name="band">The band.</param>
    /// <param name="offset">From the path to its lowest rule, positive to the left.</param>
    /// <param name="fitting">How it is fitted.</param>
    internal BandSpan Span(TriangleBand band, double offset, Fitting fitting) =>
        new(
            offset,
            0,
            band.Height,
            offset + Measured(band),
            Sides == BentSides.Straight
                ? [.. band.Rows.SelectMany(row => BandSlant.Of(row, band))]
                : [],
            fitting.LimitsFor(band).Max
        );

    /// <summary>Height over the lowest rule where lengths are measured.</summary>
    internal double Measured(TriangleBand band) =>
        PitchLine switch
        {
            BandLine.LowerEdge => 0,
            BandLine.UpperEdge => band.Height,
            _ => band.Height / 2,
        };
}
