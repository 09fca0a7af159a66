namespace PatternGen.Geometry;

/// <summary>A part of a curve inside which its curvature does not jump, with a function that is its own at both ends.</summary>
internal readonly record struct CurveStretch(
    Func<double, CurvePlace> Curve,
    double From,
    double To
);
