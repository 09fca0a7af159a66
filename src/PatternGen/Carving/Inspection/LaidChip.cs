using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip where it lies on the wood, for those who look at all of them at once.</summary>
/// <param name="Id">Row and place.</param>
/// <param name="Shape">Number of its shape.</param>
/// <param name="Placement">How the shape is placed.</param>
/// <param name="Extents">A rectangle that holds it.</param>
/// <param name="Grain">Direction of the grain there, of length 1.</param>
internal readonly record struct LaidChip(
    ChipId Id,
    int Shape,
    Transform Placement,
    Extents Extents,
    Vector Grain
);
