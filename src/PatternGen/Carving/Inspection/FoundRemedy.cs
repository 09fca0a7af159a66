using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A remedy before it is put into words.</summary>
/// <param name="Kind">What to do.</param>
/// <param name="Value">The number that goes with it.</param>
/// <param name="Detail">What the words need beside it, or 0.</param>
/// <param name="Direction">Where something is to be moved.</param>
internal readonly record struct FoundRemedy(
    RemedyKind Kind,
    double Value,
    double Detail = 0,
    Angle? Direction = null
);
