namespace PatternGen;

/// <summary>A corner as it will be written: whole units of the last decimal, and the bulge of what starts there.</summary>
/// <param name="X">x in units of the last decimal.</param>
/// <param name="Y">y in units of the last decimal.</param>
/// <param name="Bulge">0 for a line, else at least <see cref="RoundedRun.SmallestBulge"/> in size.</param>
internal readonly record struct RoundedVertex(long X, long Y, double Bulge)
{
    internal bool IsAt(in RoundedVertex other) => X == other.X && Y == other.Y;
}
