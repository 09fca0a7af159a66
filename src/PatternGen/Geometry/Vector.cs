namespace PatternGen.Geometry;

/// <summary>x</summary>
public readonly record struct Vector(double X, double Y);
