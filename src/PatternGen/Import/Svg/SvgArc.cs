namespace PatternGen;

/// <summary>The shape of an elliptic arc as path data gives it; its ends stand elsewhere.</summary>
/// <param name="RadiusX">The half axis along the turned x axis.</param>
/// <param name="RadiusY">The other half axis.</param>
/// <param name="Turn">Degrees from the x axis to the first half axis.</param>
/// <param name="IsLarge">Whether it is more than a half turn.</param>
/// <param name="IsSweeping">Whether its angle grows: clockwise as seen on a screen.</param>
internal readonly record struct SvgArc(
    double RadiusX,
    double RadiusY,
    double Turn,
    bool IsLarge,
    bool IsSweeping
);
