namespace PatternGen;

/// <summary>What a frame of equal sides was made from: one of the two lengths.</summary>
/// <param name="Sides">Number of sides.</param>
/// <param name="Side">Length of a side in mm.</param>
/// <param name="Across">Distance between opposite sides in mm.</param>
internal sealed record RegularMeasures(int Sides, double? Side, double? Across);
