namespace PatternGen;

/// <summary>How a cut runs to the grain.</summary>
/// <remarks>
/// Ahead of the blade, the fibres that it severs run out of the ground into the chip, or out of the chip into the ground. In the
/// first case they lie the way the blade goes, and the wall comes out clean: that is with the grain. In the second the
/// blade is drawn into the ground and may lift splinters there. Common practice, no source.
/// </remarks>
public enum GrainRun
{
    /// <summary>Within 10 degrees of the grain.</summary>
    Along,

    /// <summary>At an angle, the fibres ahead of the blade running into the chip.</summary>
    With,

    /// <summary>Within 10 degrees of square to the grain.</summary>
    Across,

    /// <summary>At an angle, the fibres ahead of the blade running into the ground.</summary>
    Against,
}
