using System.Globalization;
using System.Text;

namespace PatternGen;

/// <summary>Writes a plan as comma-separated values after RFC 4180.</summary>
internal static class CsvSchedule
{
    private const int Decimals = 6;

    internal static readonly string[] Columns =
    [
        "step",
        "chips",
        "cuts",
        "kind",
        "side",
        "hole",
        "facing",
        "board_turn",
        "start_x",
        "start_y",
        "end_x",
        "end_y",
        "direction",
        "deepest_x",
        "deepest_y",
        "depth",
        "deepest_along",
        "start_depth",
        "end_depth",
        "length",
        "blade_angle",
        "pressure",
        "grain",
        "step_reason",
        "reason",
    ];

    internal static void Write(CarvingPlan plan, OutputBuffer output)
    {
        WriteLine(output, Columns);
        foreach (var step in plan.Steps)
            if (plan.Order == CarvingOrder.ByPasses)
                WriteLine(output, Fields(step, step.Chips, step.Strokes[0], step.Strokes.Count));
            else
                foreach (var stroke in step.Strokes)
                    WriteLine(output, Fields(step, [stroke.Chip], stroke, 1));
    }

    private static string[] Fields(
        PlanStep step,
        IReadOnlyList<PlannedChip> chips,
        CarvingStroke cut,
        int count
    ) =>
        [
            Text(step.Number),
            ChipList.OfIds(chips),
            Text(count),
            CodeNames.Of(cut.Kind),
            Text(cut.Side),
            Text(cut.Hole),
            CodeNames.Of(cut.Facing),
            Text(cut.BoardTurn.Degrees),
            Text(cut.Start.X),
            Text(cut.Start.Y),
            Text(cut.End.X),
            Text(cut.End.Y),
            Text(cut.Direction.Degrees),
            Text(cut.Deepest.X),
            Text(cut.Deepest.Y),
            Text(cut.Depth),
            Text(cut.DeepestAlong),
            Text(cut.StartDepth),
            Text(cut.EndDepth),
            Text(cut.Length),
            Text(cut.BladeAngle.Degrees),
            CodeNames.Of(cut.Pressure),
            CodeNames.Of(cut.Grain),
            CodeNames.Of(step.Reason),
            CodeNames.Of(cut.Reason),
        ];

    private static void WriteLine(OutputBuffer output, string[] fields)
    {
        output.Write(Encoding.UTF8.GetBytes(string.Join(',', fields.Select(Quoted)) + "\r\n"));
    }

    /// <summary>Quotes a field that holds a comma, a quote or a line break.</summary>
    private static string Quoted(string field) =>
        field.AsSpan().IndexOfAny(",\"\r\n") < 0
            ? field
            : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Text(double value) => Wording.English.Number(value, Decimals);
}
