namespace PatternGen;

/// <summary>Whether a line belongs to the figure.</summary>
public enum PencilLine
{
    /// <summary>A line of the figure.</summary>
    Drawn,

    /// <summary>A faint line that only helps to find others.</summary>
    Guide,
}
