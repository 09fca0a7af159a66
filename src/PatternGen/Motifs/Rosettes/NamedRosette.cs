namespace PatternGen;

/// <summary>A rosette with a name to ask for it by.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class NamedRosette
{
    internal NamedRosette(string name, Rosette rosette)
    {
        Name = name;
        Rosette = rosette;
    }

    /// <summary>The name, plain words for what one sees.</summary>
    public string Name { get; }

    /// <summary>The rosette.</summary>
    public Rosette Rosette { get; }
}
