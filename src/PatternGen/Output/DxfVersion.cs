namespace PatternGen;

/// <summary>The dialect of DXF that is written.</summary>
public enum DxfVersion
{
    /// <summary>Release 2000 (AC1015), which states its unit. The default.</summary>
    R2000,

    /// <summary>Release 12 (AC1009): the fallback for old readers. It can't state a unit; 1 unit is 1 mm.</summary>
    R12,
}
