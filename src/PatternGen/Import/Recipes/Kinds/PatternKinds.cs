namespace PatternGen;

/// <summary>The kinds of patterns that recipes know, the order being that of the schema. On writing, the first that can say a pattern is taken.</summary>
internal static class PatternKinds
{
    internal static IReadOnlyList<RecipeKind<Pattern>> All { get; } =
    [
        RailKind.Kind,
        RingKind.Kind,
        FrameKind.Kind,
        PanelKind.Kind,
        PathBorderKind.Kind,
        BentKind.Kind,
        CarvedKind.Kind,
        PathRepeatsKind.Kind,
        FieldKind.Kind,
        LeafKind.Kind,
        StrokeKind.Kind,
        HeartKind.Kind,
        FlowerKind.Kind,
        ScrollKind.Kind,
        StemKind.Kind,
        SnappedKind.Kind,
        CombinedKind.Kind,
        SharedKind.Kind,
        // Any pattern can be said by its pieces, so it comes last.
        DrawnKind.Kind,
    ];
}
