using PatternGen.Geometry;

namespace PatternGen;

public partial class Wording
{
    /// <summary>
    /// What a person does in a step of a compass drawing, as one sentence with its setting:
    /// <c>Set the compass to 40 mm.</c>
    /// </summary>
    /// <param name="step">The step.</param>
    public virtual string Step(CompassStep step) =>
        new StepSentence(this, Guard.NotNull(step)).Text();
}
