namespace PatternGen;

/// <summary>A rosette with a name to ask for it by.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class NamedRosette
{
    internal NamedRosette(string name, Rosette rosette, params int[] orbits)
    {
        Name = name;
        Rosette = rosette;
        Carved =
            orbits.Length > 0 ? rosette.CarveOrbits(orbits) : rosette.Carve(part => part.IsPetal);
    }

    /// <summary>The name, plain words for what one sees.</summary>
    public string Name { get; }

    /// <summary>The rosette.</summary>
    public Rosette Rosette { get; }

    /// <summary>The rosette carved: its petals, or what else suits its drawing.</summary>
    public CarvedDrawing Carved { get; }
}
