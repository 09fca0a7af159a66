namespace PatternGen;

/// <summary>Some cells of a field: those with certain numbers under a scheme.</summary>
internal sealed record CellChoice(CellScheme Scheme, params int[] Numbers)
{
    internal static CellChoice All { get; } = new(CellScheme.Alike, 0);

    internal static CellChoice None { get; } = new(CellScheme.Alike);

    internal bool Holds(CellLattice cells, int m, int n, int kind) =>
        Array.IndexOf(Numbers, cells.NumberOf(Scheme, m, n, kind)) >= 0;
}
