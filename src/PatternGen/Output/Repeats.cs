namespace PatternGen;

/// <summary>How chips are written that are drawn more than once.</summary>
/// <remarks>
/// Has no effect where sides are drawn once (<see cref="SharedSides.Once"/>), nor in a DXF of release 12, whose readers
/// often stumble over blocks.
/// </remarks>
public enum Repeats
{
    /// <summary>
    /// Every chip is written out where it lies, so that corners which neighbours share are the same to the last digit.
    /// The default.
    /// </summary>
    InFull,

    /// <summary>
    /// A chip that is drawn more than once is written once, as a definition in SVG or a block in DXF, and the rest are
    /// references to it, moved and turned: a smaller file. Mirrored copies are written out all the same, since readers
    /// disagree about mirrored arcs. Whoever reads the file adds up the corners, and those of neighbours may then differ
    /// in the last digit written.
    /// </summary>
    ByReference,
}
