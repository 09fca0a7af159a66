namespace PatternGen;

/// <summary>A change of the whole pattern that clears findings and makes no new ones. It is never made by itself.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Suggestion
{
    internal Suggestion(SuggestionKind kind, double value, string text)
    {
        Kind = kind;
        Value = value;
        Text = text;
    }

    /// <summary>What to change.</summary>
    public SuggestionKind Kind { get; }

    /// <summary>The number that goes with it; <see cref="SuggestionKind"/> says which.</summary>
    public double Value { get; }

    /// <summary>What to change, in words.</summary>
    public string Text { get; }

    /// <summary>Returns what to change, in words.</summary>
    public override string ToString() => Text;
}
