namespace PatternGen;

/// <summary>A point of a field's lattice that is laid on a given place.</summary>
public enum FieldPoint
{
    /// <summary>The centre of a cell. Of petals, the middle of the hollow-sided triangle or square between them.</summary>
    CellCentre,

    /// <summary>A corner where cells meet; those of one row stand on the level line through it. Of petals, a point where they meet.</summary>
    Corner,
}
