namespace PatternGen;

/// <summary>What became of an attribute.</summary>
/// <param name="Value">Its value in the plainest form; null if curves don't need it, or it can't be read.</param>
/// <param name="Trouble">What is wrong with it, as a phrase; null if nothing is.</param>
/// <param name="IsFatal">Whether the drawing would come out wrong without it.</param>
/// <param name="Remedy">What would work.</param>
/// <param name="IsTooMuch">Whether there is more of it than the limits allow.</param>
internal readonly record struct SvgReading(
    string? Value,
    string? Trouble = null,
    bool IsFatal = false,
    string Remedy = "",
    bool IsTooMuch = false
);
