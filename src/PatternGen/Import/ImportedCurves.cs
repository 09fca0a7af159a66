using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Collects what a reader finds, in millimetres and y up, before loose ends are joined.</summary>
/// <remarks>It counts against the limits, so that a reader can't make more than they allow.</remarks>
internal sealed class ImportedCurves(ImportSettings settings)
{
    private readonly Dictionary<(ImportNoteKind, string), (string? Where, int Count)> _notes = [];
    private int _elements;
    private int _segments;

    internal ImportSettings Settings => settings;

    /// <summary>Closed and open runs in the order found.</summary>
    internal List<SegmentRun> Runs { get; } = [];

    /// <summary>The notes, alike ones together, in the order first met.</summary>
    internal IReadOnlyList<ImportNote> Notes =>
        [
            .. _notes.Select(note => new ImportNote(
                note.Key.Item1,
                note.Key.Item2,
                note.Value.Where,
                note.Value.Count
            )),
        ];

    /// <summary>Counts an element, to be called before anything is made of it.</summary>
    /// <exception cref="ImportException">There are more than the limits allow.</exception>
    internal void CountElement(string where)
    {
        if (++_elements > settings.Limits.Elements)
            throw new ImportException(
                $"The file draws more than {settings.Limits.Elements} elements.",
                where,
                ["a drawing with fewer elements", "a higher limit (ImportLimits.WithElements)"]
            );
    }

    /// <exception cref="ImportException">There are more segments than the limits allow.</exception>
    internal void Add(SegmentRun run, string where)
    {
        _segments += run.Count;
        if (_segments > settings.Limits.Segments)
            throw new ImportException(
                $"The file draws more than {settings.Limits.Segments} lines and arcs.",
                where,
                [
                    "a coarser accuracy (ImportSettings.WithAccuracy)",
                    "a higher limit (ImportLimits.WithSegments)",
                ]
            );
        Runs.Add(run);
    }

    /// <summary>Notes something; alike things are counted together.</summary>
    internal void Note(ImportNoteKind kind, string what, string? where = null)
    {
        var key = (kind, what);
        _notes[key] = _notes.TryGetValue(key, out var before)
            ? before with
            {
                Count = before.Count + 1,
            }
            : (where, 1);
    }
}
