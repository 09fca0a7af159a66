namespace PatternGen.Geometry;

/// <summary>Whether a contour or region is sound, and if not, what is wrong where.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed record Validity
{
    internal Validity(IReadOnlyList<Flaw> flaws) => Flaws = flaws;

    /// <summary>Whether nothing is wrong.</summary>
    public bool IsValid => Flaws.Count == 0;

    /// <summary>Everything that is wrong; empty for a sound shape.</summary>
    public IReadOnlyList<Flaw> Flaws { get; }

    /// <summary>Returns all flaws, one a line, or <c>valid</c>.</summary>
    public override string ToString() => IsValid ? "valid" : string.Join('\n', Flaws);
}
