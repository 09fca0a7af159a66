namespace PatternGen;

/// <summary>Where the compass stands to draw overlapping circles.</summary>
public enum CircleGrid
{
    /// <summary>On the points of a triangular grid, as far apart as the radius: six petals meet in each point. The default.</summary>
    Triangular,

    /// <summary>On the points of a square grid, the radius × √2 apart: four petals meet in each point.</summary>
    Square,
}
