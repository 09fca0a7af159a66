namespace PatternGen;

public partial class Wording
{
    /// <summary>What a section is called: <c>Rail 742.5 × 36 mm, section</c>.</summary>
    /// <param name="title">What the pattern is.</param>
    public virtual string Section(string title) => $"{title}, section";

    /// <summary>Where a section runs, and its scale: <c>From (0, 18) to (160, 18), true size</c>.</summary>
    /// <param name="fromX">x of its start, in mm.</param>
    /// <param name="fromY">y of its start, in mm.</param>
    /// <param name="toX">x of its end, in mm.</param>
    /// <param name="toY">y of its end, in mm.</param>
    /// <param name="exaggeration">How many times as large as true depths are drawn; 1 for true size.</param>
    public virtual string SectionLine(
        double fromX,
        double fromY,
        double toX,
        double toY,
        double exaggeration
    )
    {
        var scale =
            exaggeration == 1
                ? "true size"
                : $"depths drawn {Number(exaggeration, 2)} times as large as they are";
        return $"From ({Number(fromX, 2)}, {Number(fromY, 2)}) to ({Number(toX, 2)}, {Number(toY, 2)}), {scale}";
    }

    /// <summary>The wood of a section and how much of it is left: <c>12 mm lime; deepest here 4 mm, 8 mm left below it</c>.</summary>
    /// <param name="species">Name of the wood; null if it has none.</param>
    /// <param name="thickness">Its thickness in mm.</param>
    /// <param name="deepest">Depth of the deepest place on the section, in mm.</param>
    /// <param name="left">Wood left below it, in mm; 0 if it goes through.</param>
    public virtual string SectionDepth(
        string? species,
        double thickness,
        double deepest,
        double left
    )
    {
        var below = left > 0 ? $"{Millimetres(left)} left below it" : "through the wood";
        return $"{Millimetres(thickness)} {species ?? "thick"}; deepest here {Millimetres(deepest)}, {below}";
    }

    /// <summary>What the carved surface of a section is called for readers.</summary>
    public virtual string Profile => "Carved surface";

    /// <summary>What the thickness of the wood is called for readers.</summary>
    public virtual string Thickness => "Thickness of the wood";
}
