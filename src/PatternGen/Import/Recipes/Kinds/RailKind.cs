using F = PatternGen.RecipeFieldOf<PatternGen.RailBorder>;

namespace PatternGen;

/// <summary>A rail with a band fitted along it.</summary>
internal static class RailKind
{
    private static readonly RecipeField<RailBorder, double> Length = F.Needed(
        "length",
        "Length that is seen, between the shoulders, in mm.",
        RecipeSizes.Positive,
        border => border.Rail.Length
    );

    private static readonly RecipeField<RailBorder, double> Width = F.Needed(
        "width",
        "Width of the rail in mm.",
        RecipeSizes.Positive,
        border => border.Rail.Width
    );

    private static readonly RecipeField<RailBorder, (double Left, double Right)> Tenons = F.Usually(
        "tenons",
        (0.0, 0.0),
        "Lengths of the left and the right tenon in mm; none if left out.",
        new PairType(RecipeSizes.NotNegative, "the lengths of two tenons: [left, right]"),
        border => (border.Rail.LeftTenon, border.Rail.RightTenon)
    );

    private static readonly RecipeField<RailBorder, string?> Name = F.Maybe(
        "name",
        "What the piece is called; its size if left out.",
        RecipeSizes.Text,
        border => border.Rail.Name
    );

    private static readonly RecipeField<RailBorder, TriangleBand> Band = F.Needed(
        "band",
        "The band.",
        BandType.Instance,
        border => border.Band
    );

    private static readonly RecipeField<RailBorder, double?> FromEdge = F.Maybe(
        "fromEdge",
        "Distance in mm from the lower edge of the rail to the lowest rule; centred if left out.",
        RecipeSizes.NotNegative,
        border =>
            border.FromEdge == border.Rail.BandPosition(border.Band, null)
                ? (double?)null
                : border.FromEdge
    );

    private static readonly RecipeField<RailBorder, Fitting> Fit = F.Usually(
        "fitting",
        Fitting.Default,
        "How the band is fitted.",
        FittingType.Instance,
        border => border.Fitting
    );

    private static readonly RecipeField<RailBorder, double?> SamePitch = F.Maybe(
        "samePitch",
        "The pitch in mm that the rails of a set share: as many repeats as there is room for, and the ends share the rest.",
        RecipeSizes.Positive,
        border => border.SharedPitch
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, RailBorder>(
        "rail",
        "A measured rail with a band carved along it, fitted with whole repeats.",
        pattern => pattern as RailBorder,
        new(Length, Width, Tenons, Name, Band, FromEdge, Fit, SamePitch),
        given =>
        {
            var (left, right) = given.Of(Tenons);
            var rail = Rail.Of(given.Of(Length), given.Of(Width)).WithTenons(left, right);
            if (given.Of(Name) is { } name)
                rail = rail.Named(name);
            var band = given.Of(Band);
            return new RailBorder(
                rail,
                band,
                rail.BandPosition(band, given.Of(FromEdge)),
                given.Of(Fit),
                given.Of(SamePitch) is { } pitch ? () => pitch : null
            );
        }
    );
}
