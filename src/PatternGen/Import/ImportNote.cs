namespace PatternGen;

/// <summary>Something that a reader of an imported drawing should know.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class ImportNote
{
    internal ImportNote(ImportNoteKind kind, string what, string? where, int count)
    {
        Kind = kind;
        What = what;
        Where = where;
        Count = count;
    }

    /// <summary>Whether something was left out, taken for granted or changed.</summary>
    public ImportNoteKind Kind { get; }

    /// <summary>What, as a phrase: "text", "no unit given: taken as millimetres".</summary>
    public string What { get; }

    /// <summary>Where in the file it is, or the first of several; null if nowhere in particular.</summary>
    public string? Where { get; }

    /// <summary>How many times; alike things are told once.</summary>
    public int Count { get; }

    /// <summary>Returns what, how often and where: <c>Skipped: text, 3 times, first at line 120</c>.</summary>
    public override string ToString()
    {
        var often = Count == 1 ? "" : $", {Count} times";
        var place =
            Where is null ? ""
            : Count == 1 ? $", at {Where}"
            : $", first at {Where}";
        return $"{Kind}: {What}{often}{place}";
    }
}
