namespace PatternGen;

/// <summary>How sides are drawn that two neighbouring chips have in common. A picture for viewing shows chips whole either way.</summary>
public enum SharedSides
{
    /// <summary>Every chip is a complete closed contour; a shared side is drawn by both chips. The default.</summary>
    Closed,

    /// <summary>Every side is drawn once, joined into runs as long as they go: for burning or marking the lines.</summary>
    Once,
}
