namespace PatternGen;

/// <summary>What is drawn more often than once.</summary>
/// <param name="Count">Number of stretches and outlines, each as often as it is repeated.</param>
/// <param name="Length">Their length in mm.</param>
internal sealed record RepeatedLines(int Count, double Length);
