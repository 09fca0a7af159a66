namespace PatternGen;

/// <summary>A change of the whole pattern that an inspection can suggest.</summary>
public enum SuggestionKind
{
    /// <summary>Draw the whole pattern smaller. Value: the largest factor, below 1, at which no chip is too deep.</summary>
    SmallerScale,

    /// <summary>Fit the border anew with a smaller pitch. Value: the largest pitch in mm that makes whole repeats and no chip too deep.</summary>
    SmallerPitch,

    /// <summary>Set all chips farther apart, at the same size. Value: the least factor, above 1, at which no ridge is too thin.</summary>
    LargerGaps,
}
