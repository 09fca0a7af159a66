namespace PatternGen;

/// <summary>The symmetry of a band that repeats along a line: one of exactly seven groups, by their crystallographic names.</summary>
public enum FriezeGroup
{
    /// <summary>Repeats only.</summary>
    P1,

    /// <summary>Upright mirrors.</summary>
    P1m1,

    /// <summary>A mirror along the band.</summary>
    P11m,

    /// <summary>Glide reflections along the band.</summary>
    P11g,

    /// <summary>Half turns.</summary>
    P2,

    /// <summary>Half turns, upright mirrors and glide reflections.</summary>
    P2mg,

    /// <summary>Half turns, upright mirrors and a mirror along the band.</summary>
    P2mm,
}
