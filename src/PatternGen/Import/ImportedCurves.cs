using System.Globalization;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Collects what a reader finds, in millimetres and y up, before loose ends are joined.</summary>
/// <remarks>It counts against the limits, so that a reader can't make more than they allow.</remarks>
internal sealed class ImportedCurves(
    ImportSettings settings,
    CancellationToken cancellation = default
)
{
    private readonly Dictionary<(ImportNoteKind, string), (string? Where, int Count)> _notes = [];

    /// <summary>Most different notes; of a file that gives cause for more, the others are only counted.</summary>
    private const int MostNotes = 200;

    private const string Others = "other things";

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

    /// <summary>A line of a text file, as errors and notes name it.</summary>
    internal static string LineName(int line) =>
        string.Create(CultureInfo.InvariantCulture, $"line {line}");

    /// <summary>Counts an element, to be called before anything is made of it.</summary>
    /// <exception cref="ImportException">There are more than the limits allow.</exception>
    internal void CountElement(string where)
    {
        cancellation.ThrowIfCancellationRequested();
        if (++_elements > settings.Limits.Elements)
            throw TooManyElements(where);
    }

    /// <inheritdoc cref="CountElement(string)"/>
    internal void CountElement(int line)
    {
        cancellation.ThrowIfCancellationRequested();
        if (++_elements > settings.Limits.Elements)
            throw TooManyElements(LineName(line));
    }

    /// <summary>Checks a run while it grows, so that a single one can't go on for long.</summary>
    /// <exception cref="ImportException">It has more segments than the limits leave it.</exception>
    /// <exception cref="OperationCanceledException">The caller asked to stop.</exception>
    internal void Check(int segments, string where)
    {
        cancellation.ThrowIfCancellationRequested();
        if (segments > settings.Limits.Segments - _segments)
            throw TooManySegments(where);
    }

    /// <exception cref="ImportException">There are more segments than the limits allow.</exception>
    internal void Add(SegmentRun run, string where)
    {
        if (!Fits(run))
            throw TooManySegments(where);
        Runs.Add(run);
    }

    /// <inheritdoc cref="Add(SegmentRun, string)"/>
    internal void Add(SegmentRun run, int line)
    {
        if (!Fits(run))
            throw TooManySegments(LineName(line));
        Runs.Add(run);
    }

    /// <summary>Notes something; alike things are counted together.</summary>
    internal void Note(ImportNoteKind kind, string what, string? where = null, int count = 1)
    {
        if (!CountAgain(kind, what, count))
            Begin(kind, what, where, count);
    }

    /// <inheritdoc cref="Note(ImportNoteKind, string, string, int)"/>
    internal void Note(ImportNoteKind kind, string what, int line)
    {
        if (!CountAgain(kind, what))
            Begin(kind, what, LineName(line), 1);
    }

    private bool CountAgain(ImportNoteKind kind, string what, int count = 1)
    {
        ref var known = ref CollectionsMarshal.GetValueRefOrNullRef(_notes, (kind, what));
        if (Unsafe.IsNullRef(ref known))
            return false;
        known.Count += count;
        return true;
    }

    private void Begin(ImportNoteKind kind, string what, string? where, int count)
    {
        if (_notes.Count < MostNotes)
            _notes[(kind, what)] = (where, count);
        else if (!CountAgain(kind, Others, count))
            _notes[(kind, Others)] = (where, count);
    }

    internal ImportException TooManyElements(string where) =>
        new(
            $"The file draws more than {settings.Limits.Elements} elements.",
            where,
            ["a drawing with fewer elements", "a higher limit (ImportLimits.WithElements)"]
        );

    internal ImportException TooManySegments(string where) =>
        new(
            $"The file draws more than {settings.Limits.Segments} lines and arcs.",
            where,
            [
                "a coarser accuracy (ImportSettings.WithAccuracy)",
                "a higher limit (ImportLimits.WithSegments)",
            ]
        );

    private bool Fits(SegmentRun run)
    {
        // Compared before it is added, so that the sum can't overflow.
        if (run.Count > settings.Limits.Segments - _segments)
            return false;
        _segments += run.Count;
        return true;
    }
}
