using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What a pattern was made of, kept so that a recipe can say it. What a lambda chose is kept as its results.</summary>
internal abstract record PatternOrigin;

/// <summary>Patterns put together, in the order drawn.</summary>
internal sealed record CombinedOrigin(IReadOnlyList<Pattern> Parts) : PatternOrigin;

/// <summary>A pattern and one thing done to it.</summary>
internal abstract record ChangedOrigin(Pattern Before) : PatternOrigin;

/// <summary>Moved, turned, mirrored or scaled.</summary>
internal sealed record PlacedOrigin(Pattern Before, Transform Placement) : ChangedOrigin(Before);

/// <summary>Repeated to the right.</summary>
internal sealed record RepeatedOrigin(Pattern Before, int Count, double Pitch)
    : ChangedOrigin(Before);

/// <summary>Others drawn after it.</summary>
internal sealed record WithOrigin(Pattern Before, IReadOnlyList<Pattern> Others)
    : ChangedOrigin(Before);

/// <summary>Given a name.</summary>
internal sealed record NamedOrigin(Pattern Before, string Name) : ChangedOrigin(Before);

/// <summary>Cut in other ways.</summary>
/// <param name="Before">The pattern.</param>
/// <param name="Cuts">A cut for each shape that chips share, in the order in which the tree holds them.</param>
internal sealed record CutOrigin(Pattern Before, IReadOnlyList<ChipCut> Cuts)
    : ChangedOrigin(Before);

/// <summary>A piece of wood with a grain of its own.</summary>
internal sealed record GrainOrigin(Pattern Before, Angle Direction) : ChangedOrigin(Before);
