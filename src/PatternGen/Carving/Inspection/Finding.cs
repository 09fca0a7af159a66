using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Something that an inspection found: what, how bad, where, and what would clear it.</summary>
/// <remarks>
/// What is found alike at many equal chips is one finding with many places. Immutable and safe to share between threads.
/// </remarks>
public sealed class Finding
{
    private readonly FindingPlace[] _places;
    private readonly Remedy[] _remedies;

    internal Finding(
        FindingKind kind,
        FindingSeverity severity,
        double value,
        double limit,
        FindingPlace[] places,
        Remedy[] remedies,
        string message
    )
    {
        Kind = kind;
        Severity = severity;
        Value = value;
        Limit = limit;
        _places = places;
        _remedies = remedies;
        Message = message;
    }

    /// <summary>What was found.</summary>
    public FindingKind Kind { get; }

    /// <summary>How much it matters.</summary>
    public FindingSeverity Severity { get; }

    /// <summary>What was measured at the first place, in mm, degrees or tips; <see cref="FindingKind"/> says which.</summary>
    public double Value { get; }

    /// <summary>What it is held against, in the same unit.</summary>
    public double Limit { get; }

    /// <summary>All places at which it was found, by the ids of the chips; never empty.</summary>
    public IReadOnlyList<FindingPlace> Places => _places;

    /// <summary>Number of places.</summary>
    public int Count => _places.Length;

    /// <summary>The chip at the first place.</summary>
    public ChipId Chip => _places[0].Chip;

    /// <summary>The second chip at the first place, of findings between two; null otherwise.</summary>
    public ChipId? Other => _places[0].Other;

    /// <summary>The first place, in the pattern's coordinates (mm).</summary>
    public Point Place => _places[0].Place;

    /// <summary>All chips concerned, each once, in the order of their ids.</summary>
    public IReadOnlyList<ChipId> Chips =>
        [.. _places.SelectMany(place => place.Chips).Distinct().Order()];

    /// <summary>What would clear it, the nearest first. Any one of them will do.</summary>
    public IReadOnlyList<Remedy> Remedies => _remedies;

    /// <summary>What was found and what would clear it, as a sentence or two.</summary>
    public string Message { get; }

    /// <summary>Returns the message.</summary>
    public override string ToString() => Message;
}
