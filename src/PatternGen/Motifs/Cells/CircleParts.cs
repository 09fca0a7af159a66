namespace PatternGen;

/// <summary>Which of the parts between overlapping circles are carved.</summary>
public enum CircleParts
{
    /// <summary>The petals in which two circles overlap. The default.</summary>
    Petals,

    /// <summary>The hollow-sided triangles or squares between the petals.</summary>
    Between,

    /// <summary>Both, with knife-sharp ridges between them.</summary>
    Both,
}
