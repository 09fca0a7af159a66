using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.PathBorder>;

namespace PatternGen;

/// <summary>Bands bent along paths.</summary>
internal static class PathBorderKind
{
    private static readonly RecipeField<PathBorder, SegmentRun> Path = F.Needed(
        "path",
        "The path.",
        PathFields.Type,
        border => border.Path
    );

    private static readonly RecipeField<PathBorder, TriangleBand> Band = F.Needed(
        "band",
        "The band.",
        BandType.Instance,
        border => border.Band
    );

    private static readonly RecipeField<PathBorder, double?> Offset = F.Maybe(
        "offset",
        "How far left of the path its lowest rule runs, in mm; astride if left out.",
        RecipeSizes.Signed,
        border => border.Offset == -border.Band.Height / 2 ? null : border.Offset
    );

    private static readonly RecipeField<PathBorder, Fitting> Fit = F.Usually(
        "fitting",
        Fitting.Default,
        "How the band is fitted.",
        FittingType.Instance,
        border => border.Fitting
    );

    private static readonly RecipeField<PathBorder, BentStyle> Style = F.Usually(
        "bending",
        BentStyle.Default,
        "How the band is bent.",
        BendingType.Instance,
        border => border.Style
    );

    private static readonly RecipeField<PathBorder, double> Start = F.Usually(
        "startingAt",
        0,
        "Where on a closed path it starts, in mm from its first corner.",
        RecipeSizes.Coordinate,
        border => border.Start
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, PathBorder>(
        "path-border",
        "A band bent along a path.",
        pattern => pattern as PathBorder,
        new(Path, Band, Offset, Fit, Style, Start),
        given =>
        {
            var border = given
                .Of(Path)
                .Border(given.Of(Band), given.Of(Offset))
                .Fitted(_ => given.Of(Fit))
                .WithSides(given.Of(Style).Sides, given.Of(Style).Accuracy)
                .PitchOn(given.Of(Style).PitchLine);
            PathFields.RefuseStart(border.Path, given.Of(Start));
            return given.Of(Start) == 0 ? border : border.StartingAt(given.Of(Start));
        }
    );
}
