namespace PatternGen;

/// <summary>How cells are counted in one direction, to be told apart by turns: a·m + b·n + the number of their kind, m and n being the repeats.</summary>
internal sealed record CellCounting(int A, int B, params int[] Kinds)
{
    internal int Of(int m, int n, int kind) => A * m + B * n + (Kinds.Length > 0 ? Kinds[kind] : 0);
}
