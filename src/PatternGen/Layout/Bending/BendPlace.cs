namespace PatternGen;

/// <summary>A place on a band as it lies on a rail.</summary>
/// <param name="X">Distance along the band in mm, of the place itself or of a corner that neighbours share.</param>
/// <param name="Y">Height over the lowest rule, in mm.</param>
/// <param name="Beyond">How far the place lies along the band from that corner, so that neighbours count alike.</param>
internal readonly record struct BendPlace(double X, double Y, double Beyond = 0);

/// <summary>A corner of a chip before it is bent, with the bulge that its side has after.</summary>
internal readonly record struct BentCorner(BendPlace Place, double Bulge);
