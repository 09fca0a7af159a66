using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A stretch of wall in one tone, in the frame of the chip's shape, as seen from above.</summary>
/// <param name="Ring">Its outline: along the side, and back along the valley.</param>
/// <param name="Downhill">The direction into the chip in which it goes down, of length 1.</param>
internal sealed record WallFacet(Vertex[] Ring, Vector Downhill);
