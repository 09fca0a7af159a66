namespace PatternGen;

/// <summary>The kind of file that a pattern is written to.</summary>
public enum FileFormat
{
    /// <summary>Scalable Vector Graphics, millimetres, true size.</summary>
    Svg,

    /// <summary>Drawing Exchange Format, millimetres.</summary>
    Dxf,
}
