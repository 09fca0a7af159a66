namespace PatternGen;

/// <summary>What a field is filled with.</summary>
public enum FieldLattice
{
    /// <summary>Equilateral triangles, pointing up and down by turns.</summary>
    Triangles,

    /// <summary>Squares.</summary>
    Squares,

    /// <summary>Diamonds, standing on their corners.</summary>
    Diamonds,

    /// <summary>Regular hexagons with a level side below.</summary>
    Hexagons,

    /// <summary>Overlapping circles about the points of a triangular grid, each through its six neighbours' centres.</summary>
    Circles,

    /// <summary>Overlapping circles about the points of a square grid, four of them through one point.</summary>
    CirclesOnSquares,

    /// <summary>Scales: rows of arcs, each over the two below.</summary>
    Scales,

    /// <summary>Basket weave: groups of strips, upright and level by turns.</summary>
    BasketWeave,

    /// <summary>Hourglasses: two triangles tip to tip in each cell.</summary>
    Hourglasses,
}
