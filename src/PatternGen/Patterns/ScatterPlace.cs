using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A place for a motif among others.</summary>
/// <param name="At">How the motif's frame is placed there.</param>
/// <param name="Child">Which of the motifs stands there, counted from 0.</param>
internal readonly record struct ScatterPlace(Transform At, int Child) : IPlaceOfChild;
