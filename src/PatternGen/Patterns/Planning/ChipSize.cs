namespace PatternGen;

/// <summary>Size class of a chip, by its width: the diameter of the largest circle in it. Common practice, no source.</summary>
public enum ChipSize
{
    /// <summary>Less than 3 mm wide.</summary>
    Small,

    /// <summary>From 3 mm to less than 6 mm wide.</summary>
    Medium,

    /// <summary>6 mm wide and more: at 65 degrees, deeper than 6.4 mm, which takes more than one pass of the knife.</summary>
    Large,
}
