using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Makes step-by-step sheets of compass drawings.</summary>
public static class StepSheets
{
    /// <summary>Returns the sheet that shows how to make a drawing: a small picture a step, its new lines strong, what stood before faint.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="wording">The language; English by default.</param>
    /// <returns><c>Rosette.Petals(12, 40).Steps().Save("how-to-draw-it.svg")</c> writes it.</returns>
    /// <exception cref="PatternException">The drawing has no steps: it came from a file, which does not say how to draw it by hand.</exception>
    public static StepSheet Steps(this CompassDrawing drawing, Wording? wording = null) =>
        Guard.NotNull(drawing).Instructions.Count > 0
            ? new(drawing, wording ?? Wording.English)
            : throw new PatternException(
                "The drawing came from a file, so there are no steps to draw it with compass and straightedge.",
                null,
                [
                    "the pattern saved For.Paper at true size, to transfer it",
                    "CompassDrawing.Of, to draw the figure step by step",
                ]
            );
}
