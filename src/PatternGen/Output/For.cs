namespace PatternGen;

/// <summary>What a file is wanted for.</summary>
public enum For
{
    /// <summary>To look at on a screen: chips filled as cut away, on wood. The default for SVG.</summary>
    Viewing,

    /// <summary>To print at true size: outlines, a check bar and a caption. SVG only.</summary>
    Paper,

    /// <summary>For a laser, router or CAD program: centre lines only, a layer for each purpose. The default for DXF.</summary>
    Machine,
}
