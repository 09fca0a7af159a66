namespace PatternGen;

/// <summary>What a line of the drawing is for. Files keep each purpose on a layer of its own.</summary>
public enum Layer
{
    /// <summary>Outline of the wood.</summary>
    Stock,

    /// <summary>Lines to lay the pattern out by: ruled lines, shoulders, centre lines. Drawn, not cut.</summary>
    LayoutLines,

    /// <summary>V grooves along a line.</summary>
    LineCuts,

    /// <summary>Chips: what is cut away.</summary>
    Chips,

    /// <summary>Text that belongs to the pattern.</summary>
    Labels,

    /// <summary>Text that belongs to the file: what it is and how large.</summary>
    Note,

    /// <summary>Paths of a V bit along the valleys, in space; only in files of <see cref="GroovePaths"/>.</summary>
    Grooves,

    /// <summary>Lines of a grid to lay out by or to check against; only where <c>WithGrid</c> asks for them. Printed, not cut.</summary>
    Grid,
}
