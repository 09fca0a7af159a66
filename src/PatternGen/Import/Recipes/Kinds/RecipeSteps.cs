using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What may be done to a pattern, one step after the other.</summary>
internal static class RecipeSteps
{
    private static readonly RecipeField<RepeatedOrigin, int> Count =
        RecipeFieldOf<RepeatedOrigin>.Needed(
            "count",
            "Number of repeats.",
            new CountType(1, int.MaxValue / 2),
            done => done.Count
        );

    private static readonly RecipeField<RepeatedOrigin, double> Pitch =
        RecipeFieldOf<RepeatedOrigin>.Needed(
            "pitch",
            "Distance in mm from one repeat to the next, to the right.",
            RecipeSizes.Positive,
            done => done.Pitch
        );

    private static readonly RecipeField<WithOrigin, IReadOnlyList<Pattern>> Others =
        RecipeFieldOf<WithOrigin>.Needed(
            "patterns",
            "Patterns that are drawn after it, in this order.",
            new ListType<Pattern>(PatternType.Instance, "a list of patterns"),
            done => done.Others
        );

    private static readonly RecipeField<NamedOrigin, string> Name =
        RecipeFieldOf<NamedOrigin>.Needed(
            "name",
            "What the piece is called.",
            RecipeSizes.Text,
            done => done.Name
        );

    private static readonly RecipeField<GrainOrigin, Angle> Direction =
        RecipeFieldOf<GrainOrigin>.Usually(
            "direction",
            Angle.Zero,
            "Direction of the grain, from the x axis.",
            RecipeSizes.Angle,
            done => done.Direction
        );

    private static readonly RecipeField<CutOrigin, ChipCut?> OneCut =
        RecipeFieldOf<CutOrigin>.Maybe(
            "cut",
            "The cut of every chip.",
            CutType.Instance,
            done => IsOneCut(done) ? done.Cuts[0] : null
        );

    private static readonly RecipeField<CutOrigin, IReadOnlyList<ChipCut>?> Cuts =
        RecipeFieldOf<CutOrigin>.Maybe(
            "cuts",
            "A cut for each shape that chips share, in the order in which they are drawn.",
            new ListType<ChipCut>(CutType.Instance, "a list of cuts"),
            done => IsOneCut(done) ? null : done.Cuts
        );

    internal static readonly RecipeChoice<RecipeStep> Type = new(
        "step",
        "a step",
        "do",
        [
            .. PlacingSteps.All,
            Of<RepeatedOrigin>(
                "repeat",
                "Repeats the pattern to the right.",
                new(Count, Pitch),
                given => pattern => pattern.Repeated(given.Of(Count), given.Of(Pitch))
            ),
            new RecipeKind<RecipeStep, WithOrigin>(
                "with",
                "Draws other patterns after it.",
                step => step.Done as WithOrigin,
                new(Others),
                (given, reading) =>
                    new(
                        null,
                        pattern =>
                        {
                            reading.RefuseTooMany(given.Of(Others).Prepend(pattern));
                            return pattern.With(given.Of(Others));
                        }
                    )
            ),
            Of<NamedOrigin>(
                "name",
                "Gives the pattern a name, for captions.",
                new(Name),
                given => pattern => pattern.Named(given.Of(Name))
            ),
            Of<CutOrigin>(
                "cut",
                "Cuts the chips in another way.",
                new(OneCut, Cuts),
                given =>
                {
                    if (given.Has(OneCut) == given.Has(Cuts))
                        throw new ArgumentException(
                            "Give one cut for all chips, or a list of cuts."
                        );
                    return given.Of(OneCut) is { } cut
                        ? pattern => pattern.WithCut(cut)
                        : pattern => Recut(pattern, given.Of(Cuts)!);
                }
            ),
            Of<GrainOrigin>(
                "grain",
                "Makes it a piece of wood with a grain of its own.",
                new(Direction),
                given => pattern => pattern.WithGrain(given.Of(Direction))
            ),
        ]
    );

    internal static RecipeKind<RecipeStep> Of<TOrigin>(
        string name,
        string about,
        RecipeFields<TOrigin> table,
        Func<GivenFields, Func<Pattern, Pattern>> make
    )
        where TOrigin : ChangedOrigin =>
        new RecipeKind<RecipeStep, TOrigin>(
            name,
            about,
            step => step.Done as TOrigin,
            table,
            given => new(null, make(given))
        );

    private static bool IsOneCut(CutOrigin done) =>
        done.Cuts.Count > 0 && done.Cuts.All(cut => cut == done.Cuts[0]);

    private static Pattern Recut(Pattern pattern, IReadOnlyList<ChipCut> cuts)
    {
        var next = 0;
        var recut = pattern.WithCut(_ => next < cuts.Count ? cuts[next++] : throw Other());
        return next == cuts.Count ? recut : throw Other();

        PatternException Other() =>
            new(
                $"The {cuts.Count} cuts belong to a pattern with as many shapes of chips, but this one has {(next < cuts.Count ? $"only {next}" : "more")}.",
                remedies:
                [
                    "the pattern as it was when the recipe was saved",
                    "one cut for all chips",
                ]
            );
    }
}
