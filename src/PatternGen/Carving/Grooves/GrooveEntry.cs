namespace PatternGen;

/// <summary>How a bit gets into the wood at the start of a groove path.</summary>
public enum GrooveEntry
{
    /// <summary>At depth 0 in a tip of the chip, or of a line cut that tapers, and down the valley.</summary>
    Tip,

    /// <summary>
    /// At depth 0 on the outline and straight down a wall, as steep as the wall: where a chip has no tip that is left, such as a ring, or a
    /// chip with round ends.
    /// </summary>
    Wall,

    /// <summary>At its full depth: a line cut that is as wide all along starts so. The bit plunges there, unless the line starts off the wood.</summary>
    Plunge,
}
