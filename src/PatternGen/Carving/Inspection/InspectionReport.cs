namespace PatternGen;

/// <summary>What an inspection found.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class InspectionReport
{
    private readonly Finding[] _findings;
    private readonly Wording _words;
    private readonly Lazy<Suggestion[]> _suggestions;

    internal InspectionReport(
        Pattern pattern,
        Finding[] findings,
        Func<IEnumerable<Suggestion>> suggest,
        Wording words
    )
    {
        Pattern = pattern;
        _findings = findings;
        _words = words;
        _suggestions = new(() => [.. suggest()]);
    }

    /// <summary>What was inspected.</summary>
    public Pattern Pattern { get; }

    /// <summary>The number of findings of each severity in words: <c>1 error, 2 warnings</c>, or <c>nothing found</c>.</summary>
    public string Summary =>
        _words.FindingCount(
            Count(FindingSeverity.Error),
            Count(FindingSeverity.Warning),
            Count(FindingSeverity.Note)
        );

    /// <summary>What was found, errors first, then by kind and by chip. What is alike at equal chips is one finding.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>
    /// Changes of the whole pattern that would clear findings and make no new ones, each inspected before it is suggested;
    /// often none. They are looked for when first asked for.
    /// </summary>
    public IReadOnlyList<Suggestion> Suggestions => _suggestions.Value;

    /// <summary>Whether the pattern can be carved as drawn: whether there is no error.</summary>
    public bool IsCarvable => Count(FindingSeverity.Error) == 0;

    /// <summary>Returns the number of findings that matter as much.</summary>
    public int Count(FindingSeverity severity) =>
        _findings.Count(finding => finding.Severity == severity);

    /// <summary>Returns the findings of a kind.</summary>
    public IEnumerable<Finding> Of(FindingKind kind) =>
        _findings.Where(finding => finding.Kind == kind);

    /// <summary>Returns the number of findings, and each in a line of its own; and that line cuts are not looked at, if there are any.</summary>
    public override string ToString()
    {
        string[] unseen = Pattern.Root.Layers.HasFlag(LayerSet.LineCuts)
            ? [_words.LineCutsNotInspected]
            : [];
        return string.Join(
            '\n',
            [Summary, .. unseen, .. _findings.Select(finding => finding.Message)]
        );
    }
}
