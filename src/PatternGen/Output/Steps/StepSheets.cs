using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Makes step-by-step sheets of compass drawings.</summary>
public static class StepSheets
{
    /// <summary>Returns the sheet that shows how to make a drawing: a small picture a step, its new lines strong, what stood before faint.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="wording">The language; English by default.</param>
    /// <returns><c>Rosette.Petals(12, 40).Steps().Save("how-to-draw-it.svg")</c> writes it.</returns>
    public static StepSheet Steps(this CompassDrawing drawing, Wording? wording = null) =>
        new(Guard.NotNull(drawing), wording ?? Wording.English);
}
