namespace PatternGen;

/// <summary>A band with a name to ask for it by.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class NamedBand
{
    internal NamedBand(string name, TriangleBand band)
    {
        Name = name;
        Band = band;
    }

    /// <summary>The name, plain words for what one sees.</summary>
    public string Name { get; }

    /// <summary>The band.</summary>
    public TriangleBand Band { get; }
}
