using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A corner of a path before the bit's angle makes depths of clearances.</summary>
/// <param name="Point">Where it lies.</param>
/// <param name="Clearance">Radius in mm of the circle that the cone cuts at the surface when its point is here.</param>
/// <param name="Rise">How much less that must be on the way to the next corner, so that the cone cuts into no wall there.</param>
internal readonly record struct GrooveKnot(Point Point, double Clearance, double Rise);
