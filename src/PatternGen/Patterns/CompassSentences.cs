using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Says the steps of a compass drawing.</summary>
public static class CompassSentences
{
    /// <summary>Returns the step as one plain sentence with its setting in mm: <c>With the point on A, draw a circle.</c></summary>
    /// <param name="step">A step of a drawing.</param>
    /// <param name="wording">The words; English by default.</param>
    public static string Sentence(this CompassStep step, Wording? wording = null) =>
        (wording ?? Wording.English).Step(Guard.NotNull(step));
}
