namespace PatternGen.Geometry;

/// <summary>A place along a run.</summary>
/// <param name="Length">Distance from the start in mm.</param>
/// <param name="Segment">The segment's place in the run.</param>
internal readonly record struct RunPlace(double Length, int Segment);
