namespace PatternGen;

/// <summary>How the cells of a field are told apart by turns. The cells of a kind have a number, from 0.</summary>
public enum CellScheme
{
    /// <summary>All cells are alike: number 0.</summary>
    Alike,

    /// <summary>
    /// Two kinds, 0 and 1, as on a chessboard. Of triangles, those pointing up and those pointing down; of diamonds, rows by
    /// turns; of hourglasses and basket weave that turn, the upright and the level ones.
    /// </summary>
    Checkerboard,

    /// <summary>Three kinds, 0 to 2, so that no hexagon is beside one of its kind; of squares, slanting rows by turns. Of petals, the three directions.</summary>
    ThreeByTurns,

    /// <summary>Rows by turns, 0 and 1.</summary>
    Rows,

    /// <summary>Columns by turns, 0 and 1.</summary>
    Columns,
}
