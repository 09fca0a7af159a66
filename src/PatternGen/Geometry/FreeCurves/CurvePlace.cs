namespace PatternGen.Geometry;

/// <summary>Where a parametrised curve is, and which way it goes there.</summary>
/// <param name="Point">The place.</param>
/// <param name="Along">The derivative: its direction counts, and that its length is not 0 unless the curve stands still.</param>
internal readonly record struct CurvePlace(Point Point, Vector Along);
