using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes carving plans out and draws them.</summary>
public static class CarvingSchedules
{
    /// <summary>Returns the plan written out, to be saved as Markdown, CSV or JSON.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="wording">The language; English by default.</param>
    /// <returns><c>plan.Schedule().Save("order.md")</c> writes it.</returns>
    [Pure]
    public static CarvingSchedule Schedule(this CarvingPlan plan, Wording? wording = null) =>
        new(Guard.NotNull(plan), wording ?? Wording.English, null);

    /// <summary>Returns the pattern with the number of each chip in it as a label, in the order in which they come out.</summary>
    /// <remarks>
    /// A number is as high as fits in the largest circle of its chip, and 4 mm at most. In a DXF they lie on the layer of labels.
    /// </remarks>
    [Pure]
    public static Pattern Numbered(this CarvingPlan plan) =>
        Guard.NotNull(plan).Pattern.With(Pattern.OfLabels(plan.Chips.Select(ChipNumbers.LabelOf)));

    /// <summary>Returns the drawing of the plan: the chips with their numbers, and an arrow for each cut.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="wording">The language; English by default.</param>
    /// <returns><c>plan.Sheet().Save("order.svg")</c> writes it.</returns>
    [Pure]
    public static PlanSheet Sheet(this CarvingPlan plan, Wording? wording = null) =>
        new(Guard.NotNull(plan), wording ?? Wording.English);
}
