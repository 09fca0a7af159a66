using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Plans in which order patterns are carved.</summary>
public static class CarvingPlanning
{
    /// <summary>Returns the plan to carve a pattern with a knife: chip by chip, three cuts a triangle, with the right hand.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="knife">The knife, which decides the angle of the walls.</param>
    /// <param name="stock">The wood, of which the grain counts.</param>
    /// <returns><c>border.Plan(Knife.Held(65), Stock.Thick(12)).ByPasses()</c> turns the board as seldom as can be.</returns>
    [Pure]
    public static CarvingPlan Plan(this Pattern pattern, Knife knife, Stock stock) =>
        new(
            new(Guard.NotNull(pattern), Guard.NotNull(knife), Guard.NotNull(stock)),
            CarvingOrder.ByChip,
            Technique.ThreeCuts,
            Hand.Right
        );
}
