namespace PatternGen;

/// <summary>How the hourglasses of a field stand.</summary>
public enum HourglassTurn
{
    /// <summary>Upright and level by turns, as on a chessboard. The default.</summary>
    ByTurns,

    /// <summary>All upright: the triangles stand on the lower and hang from the upper side of their cell.</summary>
    Upright,

    /// <summary>All level: the triangles stand on the left and right side of their cell.</summary>
    Level,
}
