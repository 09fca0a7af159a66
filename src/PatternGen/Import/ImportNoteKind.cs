namespace PatternGen;

/// <summary>What an import has to say of something in a file.</summary>
public enum ImportNoteKind
{
    /// <summary>It was left out: text, pictures, solids, what can't be drawn as lines and arcs in a plane.</summary>
    Skipped,

    /// <summary>The file does not say, so something was taken for granted, such as the unit.</summary>
    Assumed,

    /// <summary>It was changed on the way: an ellipse or a free curve drawn with arcs, doubled corners merged.</summary>
    Changed,

    /// <summary>It stays open where it could have been joined: more than two ends meet.</summary>
    LeftOpen,
}
