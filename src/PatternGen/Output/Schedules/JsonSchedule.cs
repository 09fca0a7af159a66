using System.Text.Json;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes a plan as JSON, a step at a time.</summary>
internal sealed class JsonSchedule
{
    private const int Decimals = 6;

    /// <summary>Bytes after which what is written is passed on.</summary>
    private const int Room = 1 << 15;

    private readonly CarvingSchedule _schedule;
    private readonly Utf8JsonWriter _json;

    private JsonSchedule(CarvingSchedule schedule, Utf8JsonWriter json)
    {
        (_schedule, _json) = (schedule, json);
    }

    internal static void Write(CarvingSchedule schedule, OutputBuffer output)
    {
        var options = new JsonWriterOptions { Indented = false };
        using var json = new Utf8JsonWriter(new BufferStream(output), options);
        new JsonSchedule(schedule, json).Write();
        json.Flush();
    }

    private void Write()
    {
        var plan = _schedule.Plan;
        _json.WriteStartObject();
        _json.WriteString("format", "carving-plan");
        _json.WriteNumber("version", 1);
        _json.WriteString("title", plan.Pattern.TitleWithSize(_schedule.Wording));
        Code("order", plan.Order);
        Code("technique", plan.Technique);
        Code("hand", plan.Hand);
        _json.WriteStartObject("knife");
        Number("angle", plan.Knife.HeldAt.Degrees);
        _json.WriteEndObject();
        _json.WriteStartObject("stock");
        Number("thickness", plan.Stock.Thickness);
        Number("grain", plan.Stock.Grain.Degrees);
        _json.WriteString("species", plan.Stock.Species);
        _json.WriteEndObject();
        WriteTotals(plan);
        _json.WriteStartArray("cautions");
        foreach (var caution in _schedule.Wording.KnifeCautions)
            _json.WriteStringValue(caution);
        _json.WriteEndArray();
        _json.WriteStartArray("chips");
        foreach (var chip in plan.Chips)
            WriteChip(chip);
        _json.WriteEndArray();
        _json.WriteStartArray("steps");
        foreach (var step in plan.Steps)
            WriteStep(step);
        _json.WriteEndArray();
        _json.WriteEndObject();
    }

    private void WriteTotals(CarvingPlan plan)
    {
        var totals = plan.Totals;
        _json.WriteStartObject("totals");
        _json.WriteNumber("chips", totals.Chips);
        _json.WriteNumber("small", totals.ChipsOf(ChipSize.Small));
        _json.WriteNumber("medium", totals.ChipsOf(ChipSize.Medium));
        _json.WriteNumber("large", totals.ChipsOf(ChipSize.Large));
        _json.WriteNumber("cuts", totals.Strokes);
        _json.WriteNumber("lightCuts", totals.LightStrokes);
        Number("length", totals.Length);
        Number("volume", totals.Volume);
        Number("deepest", totals.Deepest);
        _json.WriteNumber("lineCuts", totals.LineCuts);
        Number("lineCutLength", totals.LineCutLength);
        Number("lineCutVolume", totals.LineCutVolume);
        _json.WriteNumber("boardTurns", plan.BoardTurns);
        _json.WriteNumber("boardTurnsSaved", plan.BoardTurnsSaved);
        if (_schedule.Rate is { } rate)
            Number("minutes", plan.MinutesAt(rate));
        else
            _json.WriteNull("minutes");
        _json.WriteEndObject();
    }

    private void WriteChip(PlannedChip chip)
    {
        _json.WriteStartObject();
        _json.WriteNumber("number", chip.Number);
        _json.WriteString("id", chip.Chip.Id.ToString());
        Code("size", chip.Size);
        Number("width", chip.Width);
        Number("depth", chip.Solid.Depth);
        Number("volume", chip.Solid.Volume);
        Code("reason", chip.Reason);
        _json.WriteEndObject();
        PassOn();
    }

    private void WriteStep(PlanStep step)
    {
        _json.WriteStartObject();
        _json.WriteNumber("step", step.Number);
        Code("reason", step.Reason);
        _json.WriteBoolean("turnsBoard", step.TurnsBoard);
        _json.WriteStartArray("cuts");
        foreach (var cut in step.Strokes)
            WriteCut(cut);
        _json.WriteEndArray();
        _json.WriteEndObject();
    }

    private void WriteCut(CarvingStroke cut)
    {
        _json.WriteStartObject();
        _json.WriteNumber("chip", cut.Chip.Number);
        Code("kind", cut.Kind);
        _json.WriteNumber("side", cut.Side);
        _json.WriteNumber("hole", cut.Hole);
        Code("facing", cut.Facing);
        Number("boardTurn", cut.BoardTurn.Degrees);
        Place("start", cut.Start);
        Place("end", cut.End);
        Number("direction", cut.Direction.Degrees);
        Place("deepest", cut.Deepest);
        Number("depth", cut.Depth);
        Number("deepestAlong", cut.DeepestAlong);
        Number("startDepth", cut.StartDepth);
        Number("endDepth", cut.EndDepth);
        Number("length", cut.Length);
        Number("bladeAngle", cut.BladeAngle.Degrees);
        Code("pressure", cut.Pressure);
        Code("grain", cut.Grain);
        Code("reason", cut.Reason);
        _json.WriteEndObject();
        PassOn();
    }

    private void Place(string name, Point place)
    {
        _json.WriteStartArray(name);
        _json.WriteNumberValue(Rounded(place.X));
        _json.WriteNumberValue(Rounded(place.Y));
        _json.WriteEndArray();
    }

    private void Number(string name, double value) => _json.WriteNumber(name, Rounded(value));

    /// <summary>As a decimal it is written without an exponent. Lengths of ours are far below what it holds.</summary>
    private static decimal Rounded(double value) => Math.Round((decimal)value, Decimals);

    private void Code<T>(string name, T value)
        where T : struct, Enum => _json.WriteString(name, CodeNames.Of(value));

    private void PassOn()
    {
        if (_json.BytesPending > Room)
            _json.Flush();
    }
}
