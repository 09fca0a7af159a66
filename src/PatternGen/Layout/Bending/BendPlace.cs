namespace PatternGen;

/// <summary>A place on a band as it lies on a rail: x along it, y over its lowest rule, in mm.</summary>
internal readonly record struct BendPlace(double X, double Y);

/// <summary>A corner of a chip before it is bent, with the bulge that its side has after.</summary>
internal readonly record struct BentCorner(BendPlace Place, double Bulge);
