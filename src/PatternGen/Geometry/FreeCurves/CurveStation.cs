namespace PatternGen.Geometry;

/// <summary>A place of a smooth run, with all that the fit asks of it.</summary>
/// <param name="T">The curve's parameter.</param>
/// <param name="Point">The place.</param>
/// <param name="Direction">Direction of travel, of length 1.</param>
/// <param name="Turn">By how much the direction has turned since the start of the run, in radians, whole turns included.</param>
internal readonly record struct CurveStation(double T, Point Point, Vector Direction, double Turn);
