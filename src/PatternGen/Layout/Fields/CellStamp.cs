using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What is carved in a cell, drawn once for all cells alike, at the repeat (0, 0) of the lattice's frame.</summary>
/// <param name="Room">What must lie inside for the cell to be whole.</param>
/// <param name="Inner">A place inside the room.</param>
/// <param name="Middle">The centre of the cell.</param>
/// <param name="Parts">The chips and motifs in it.</param>
internal sealed record CellStamp(
    Contour Room,
    Point Inner,
    Point Middle,
    IReadOnlyList<LatticePlace> Parts
);
