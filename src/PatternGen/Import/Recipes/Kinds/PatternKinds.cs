namespace PatternGen;

/// <summary>The kinds of patterns that recipes know, the order being that of the schema. On writing, the first that can say a pattern is taken.</summary>
internal static class PatternKinds
{
    internal static IReadOnlyList<RecipeKind<Pattern>> All { get; } =
    [RailKind.Kind, CarvedKind.Kind, CombinedKind.Kind, SharedKind.Kind, DrawnKind.Kind];
}
