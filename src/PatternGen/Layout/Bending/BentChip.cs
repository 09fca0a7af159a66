namespace PatternGen;

/// <summary>A chip as it is bent, in the frame of its station.</summary>
/// <param name="Shape">What it looks like there.</param>
/// <param name="Places">For each corner the place on the band that it comes from, counted from the station.</param>
/// <param name="Middle">x half-way along it, which tells the stretch that it lies on.</param>
internal sealed record BentChip(ChipShape Shape, BendPlace[] Places, double Middle);
