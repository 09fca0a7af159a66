using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.PathRepeats>;

namespace PatternGen;

/// <summary>Motifs repeated along a path.</summary>
internal static class PathRepeatsKind
{
    private static readonly RecipeField<PathRepeats, SegmentRun> Path = F.Needed(
        "path",
        "The path.",
        PathFields.Type,
        repeats => repeats.Path
    );

    private static readonly RecipeField<PathRepeats, IReadOnlyList<Pattern>> Motifs = F.Needed(
        "motifs",
        "The motifs, which take turns, each drawn about the origin.",
        new ListType<Pattern>(PatternType.Instance, "a list of patterns", least: 1),
        repeats => repeats.Motifs
    );

    private static readonly RecipeField<PathRepeats, double> Spacing = F.Needed(
        "spacing",
        "Distance along the path in mm to aim at.",
        RecipeSizes.Positive,
        repeats => repeats.Settings.Spacing
    );

    private static readonly RecipeField<PathRepeats, Heading> Looks = F.Usually(
        "heading",
        default,
        "Which way repeats look; along the path if left out.",
        HeadingType.Type,
        repeats => repeats.Settings.Heading
    );

    private static readonly RecipeField<PathRepeats, (double Min, double Max)?> Limits = F.Maybe(
        "spacingBetween",
        "Shortest and longest distance in mm; within a third if left out.",
        new PairType(RecipeSizes.Positive, "two lengths: [shortest, longest]"),
        repeats => repeats.Settings.Limits
    );

    private static readonly RecipeField<PathRepeats, bool> Exact = F.Usually(
        "exactSpacing",
        false,
        "Whether the spacing is kept to, with the rest at the ends.",
        RecipeSizes.Flag,
        repeats => repeats.Settings.IsExact
    );

    private static readonly RecipeField<PathRepeats, (double First, double Last)> Margins =
        F.Usually(
            "endMargins",
            (0.0, 0.0),
            "Lengths in mm left free at both ends.",
            new PairType(RecipeSizes.NotNegative, "the lengths of two margins: [first, last]"),
            repeats => (repeats.Settings.FirstMargin, repeats.Settings.LastMargin)
        );

    private static readonly RecipeField<PathRepeats, double?> Start = F.Maybe(
        "startingAt",
        "Where on a closed path the first repeat stands, in mm from its first corner.",
        RecipeSizes.Coordinate,
        repeats => repeats.Settings.Start
    );

    private static readonly RecipeField<PathRepeats, RepeatParity> Parity = F.Usually(
        "repeats",
        RepeatParity.Any,
        "Number of repeats: odd, even or any.",
        new WordType<RepeatParity>(),
        repeats => repeats.Settings.Parity
    );

    private static readonly RecipeField<PathRepeats, bool> OnEnds = F.Usually(
        "repeatsOnEnds",
        false,
        "Whether repeats stand on the ends, in place of half the spacing in.",
        RecipeSizes.Flag,
        repeats => repeats.Settings.OnEnds
    );

    private static readonly RecipeField<PathRepeats, double> Offset = F.Usually(
        "offset",
        0,
        "How far left of the path repeats stand, in mm.",
        RecipeSizes.Signed,
        repeats => repeats.Settings.Offset
    );

    private static readonly RecipeField<PathRepeats, PathSides> Sides = F.Usually(
        "sides",
        PathSides.One,
        "On one side, mirrored in turn, or on both.",
        new WordType<PathSides>(),
        repeats => repeats.Settings.Sides
    );

    private static readonly RecipeField<PathRepeats, IReadOnlyList<double>?> Factors = F.Maybe(
        "scaled",
        "Factors by which repeats are scaled, from the first to the last.",
        new ListType<double>(new NumberType(1e-3, 1e3), "a list of factors", least: 1),
        repeats => repeats.Settings.Factors.Count > 0 ? repeats.Settings.Factors : null
    );

    private static readonly RecipeField<PathRepeats, bool> BetweenCorners = F.Usually(
        "scaledBetweenCorners",
        false,
        "Whether the factors hold from each corner to the next.",
        RecipeSizes.Flag,
        repeats => repeats.Settings.FactorsBetweenCorners
    );

    private static readonly RecipeField<PathRepeats, PathCorners> Corners = F.Usually(
        "corners",
        PathCorners.Turned,
        "What happens at corners: repeats turn, leave them free, or a motif stands there.",
        new WordType<PathCorners>(),
        repeats => repeats.Settings.Corners
    );

    private static readonly RecipeField<PathRepeats, double> Clearance = F.Usually(
        "clearance",
        0,
        "Length in mm at either side of a corner to which that applies.",
        RecipeSizes.NotNegative,
        repeats => repeats.Settings.Clearance
    );

    private static readonly RecipeField<PathRepeats, Pattern?> CornerMotif = F.Maybe(
        "cornerMotif",
        "The motif in corners.",
        PatternType.Instance,
        repeats => repeats.Settings.CornerMotif
    );

    private static readonly RecipeField<PathRepeats, Heading> CornerHeading = F.Usually(
        "cornerHeading",
        default,
        "Which way the motif in corners looks.",
        HeadingType.Type,
        repeats => repeats.Settings.CornerHeading
    );

    private static readonly RecipeField<PathRepeats, double> LeastCorner = F.Usually(
        "cornersFrom",
        10,
        "From how many degrees of turn on a corner is one.",
        new NumberType(0.001, 180),
        repeats =>
            AngleType.DegreesOf(repeats.Settings.LeastCorner)
            ?? repeats.Settings.LeastCorner.Degrees
    );

    private static readonly RecipeField<PathRepeats, bool> ShowsPath = F.Usually(
        "pathAsLayoutLine",
        false,
        "Whether the path is drawn as a layout line.",
        RecipeSizes.Flag,
        repeats => repeats.Settings.ShowsPath
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, PathRepeats>(
        "path-repeats",
        "Motifs repeated at equal distances along a path.",
        pattern => pattern as PathRepeats,
        new(
            Path,
            Motifs,
            Spacing,
            Looks,
            Limits,
            Exact,
            Margins,
            Start,
            Parity,
            OnEnds,
            Offset,
            Sides,
            Factors,
            BetweenCorners,
            Corners,
            Clearance,
            CornerMotif,
            CornerHeading,
            LeastCorner,
            ShowsPath
        ),
        Make
    );

    private static PathRepeats Make(GivenFields given)
    {
        var repeats = given.Of(Path).Repeat(given.Of(Motifs), given.Of(Spacing), given.Of(Looks));
        if (given.Of(Limits) is { } limits)
            repeats = repeats.SpacingBetween(limits.Min, limits.Max);
        var (first, last) = given.Of(Margins);
        if ((given.Of(Corners) == PathCorners.Motif) != given.Has(CornerMotif))
            throw new ArgumentException(
                "A motif for the corners goes with \"corners\": \"motif\".",
                "cornerMotif"
            );
        if (given.Of(CornerMotif) is { } motif)
            PathRepeating.Drawn(motif);
        return new(
            repeats.Path,
            repeats.Motifs,
            repeats.CornersFrom(given.Of(LeastCorner)).Settings with
            {
                IsExact = given.Of(Exact),
                FirstMargin = first,
                LastMargin = last,
                Start = given.Of(Start),
                Parity = given.Of(Parity),
                OnEnds = given.Of(OnEnds),
                Offset = given.Of(Offset),
                Sides = given.Of(Sides),
                Factors = given.Of(Factors) ?? [],
                FactorsBetweenCorners = given.Of(BetweenCorners),
                Corners = given.Of(Corners),
                Clearance = given.Of(Clearance),
                CornerMotif = given.Of(CornerMotif),
                CornerHeading = given.Of(CornerHeading),
                ShowsPath = given.Of(ShowsPath),
            }
        );
    }
}
