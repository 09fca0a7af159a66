namespace PatternGen;

/// <summary>A place in a lattice for one of several motifs.</summary>
/// <param name="I">Number of first steps to it.</param>
/// <param name="J">Number of second steps to it.</param>
/// <param name="Turn">How the motif is turned within the lattice.</param>
/// <param name="Child">Which of the motifs stands there, counted from 0.</param>
internal readonly record struct LatticePlace(int I, int J, LatticeTurn Turn, int Child)
    : IPlaceOfChild;
