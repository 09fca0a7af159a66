namespace PatternGen;

public partial class Wording
{
    /// <summary>How many steps a drawing takes.</summary>
    public virtual string StepCount(int steps) => steps == 1 ? "1 step" : $"{steps} steps";

    /// <summary>Said at the top of a step sheet.</summary>
    public virtual string StepSheetNote =>
        "New lines are strong, earlier ones faint, and a ring marks where the needle stands. The pictures are not to scale: measure what the text says.";
}
