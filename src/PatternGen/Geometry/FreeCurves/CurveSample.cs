namespace PatternGen.Geometry;

/// <summary>A place of a curve with its directions of length 1 just before and just after it, which differ at a cusp.</summary>
internal readonly record struct CurveSample(double T, Point Point, Vector Arriving, Vector Onward);
