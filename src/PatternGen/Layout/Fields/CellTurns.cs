namespace PatternGen;

/// <summary>Something for each cell of a field, by turns: the first for cells numbered 0, and from the start again after the last.</summary>
internal sealed record CellTurns<T>(CellScheme Scheme, params T[] Values)
{
    /// <summary>Which of the values is a cell's; 0 if there are none.</summary>
    internal int IndexAt(CellLattice cells, int m, int n, int kind) =>
        Values.Length > 1 ? cells.NumberOf(Scheme, m, n, kind) % Values.Length : 0;
}
