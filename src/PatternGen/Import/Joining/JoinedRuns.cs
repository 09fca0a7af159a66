using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The runs of a file, joined.</summary>
/// <param name="Contours">Those that close.</param>
/// <param name="Chains">Those that don't.</param>
/// <param name="Moved">How far an end was moved at most, in mm.</param>
internal sealed record JoinedRuns(List<Contour> Contours, List<Chain> Chains, double Moved);
