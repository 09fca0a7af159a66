namespace PatternGen;

/// <summary>A piece of a row between two mitres: either repeats of a whole chip, or one chip that a mitre has shaped.</summary>
/// <param name="Chip">The chip as its repeat draws it, y from the lowest rule of the band.</param>
/// <param name="Stations">Where the repeats stand; null for a shaped chip, which lies where it is.</param>
/// <param name="First">Station of the first repeat.</param>
/// <param name="Count">Number of repeats.</param>
internal sealed record RowPiece(ChipShape Chip, Stations? Stations, int First, int Count);

/// <summary>Some of the repeats that a row might have, before the mitres have had their say.</summary>
/// <param name="Shape">The chip.</param>
/// <param name="Stations">Where repeats may stand.</param>
/// <param name="From">The first station, which may lie beyond the mitre.</param>
/// <param name="To">The last one, two half pitches apart.</param>
internal sealed record RowRange(TriangleShape Shape, Stations Stations, int From, int To);
