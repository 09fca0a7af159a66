namespace PatternGen;

/// <summary>A corner in space as it will be written: whole units of the last decimal.</summary>
internal readonly record struct RoundedPlace(long X, long Y, long Z)
{
    internal bool IsAbove(in RoundedPlace other) => X == other.X && Y == other.Y;
}
