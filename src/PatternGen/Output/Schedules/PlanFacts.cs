using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What a schedule and a drawing of a plan both say of it.</summary>
internal static class PlanFacts
{
    /// <summary>Angles that agree to this many degrees are written alike.</summary>
    private const double Alike = 0.05;

    /// <summary>Order, technique and hand, knife and wood.</summary>
    internal static IEnumerable<string> Of(CarvingPlan plan, Wording words)
    {
        yield return words.PlanOrder(plan.Order);
        yield return $"{words.TechniqueName(plan.Technique)}, {words.HandName(plan.Hand)}, "
            + words.KnifeAndStock(
                plan.Knife.HeldAt,
                plan.Stock.Thickness,
                plan.Stock.Species,
                plan.Stock.Grain
            );
        if (OtherAngles(plan, words) is { } others)
            yield return others;
    }

    /// <summary>The angle between blade and surface in the cuts that lean, the last of a chip among them; stabs stand upright.</summary>
    internal static Angle KnifeAngle(PlannedChip chip) => chip.Strokes[^1].BladeAngle;

    /// <summary>
    /// For how many chips the knife is held otherwise than as a rule, since they are wide or have an angle of their own; null
    /// if for none. Cut at the usual angle, a wide chip could go through the wood.
    /// </summary>
    private static string? OtherAngles(CarvingPlan plan, Wording words)
    {
        var angles = plan
            .Chips.Select(chip => KnifeAngle(chip).Degrees)
            .Where(angle => Math.Abs(angle - plan.Knife.HeldAt.Degrees) > Alike)
            .ToArray();
        return angles.Length == 0
            ? null
            : words.OtherKnifeAngles(
                angles.Length,
                Angle.FromDegrees(angles.Min()),
                Angle.FromDegrees(angles.Max())
            );
    }
}
