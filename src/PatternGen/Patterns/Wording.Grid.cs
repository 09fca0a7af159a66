namespace PatternGen;

public partial class Wording
{
    /// <summary>What snapping to a grid did: <c>on the grid, no corner moved by more than 0.25 mm, 2 pieces left as they were</c>.</summary>
    /// <param name="largestMove">How far the corner that moved most was moved, in mm.</param>
    /// <param name="leftAlone">Number of pieces that were left as they were.</param>
    /// <param name="pieces">Number of pieces in all.</param>
    public virtual string Snapped(double largestMove, int leftAlone, int pieces)
    {
        if (leftAlone == pieces && pieces > 0)
            return "off the grid: each piece would be spoilt and is left as it was";
        var moved = $"on the grid, no corner moved by more than {Millimetres(largestMove, 4)}";
        return leftAlone switch
        {
            0 => moved,
            1 => $"{moved}, 1 piece left as it was",
            _ => $"{moved}, {leftAlone} pieces left as they were",
        };
    }
}
