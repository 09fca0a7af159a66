using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.RingBorder>;

namespace PatternGen;

/// <summary>Bands round a circle or an arc.</summary>
internal static class RingKind
{
    private static readonly RecipeField<RingBorder, double> Radius = F.Needed(
        "radius",
        "Radius of the circle in mm.",
        RecipeSizes.Positive,
        border => border.Ring.Radius
    );

    private static readonly RecipeField<RingBorder, RingPlace> Place = F.Usually(
        "place",
        RingPlace.Astride,
        "Whether the band lies astride the circle, inside or outside.",
        new WordType<RingPlace>(),
        border =>
            border.Ring.OuterShare switch
            {
                0 => RingPlace.Inside,
                1 => RingPlace.Outside,
                _ => RingPlace.Astride,
            }
    );

    private static readonly RecipeField<RingBorder, TriangleBand> Band = F.Needed(
        "band",
        "The band.",
        BandType.Instance,
        border => border.Band
    );

    private static readonly RecipeField<RingBorder, Angle?> From = F.Maybe(
        "from",
        "Direction of the first repeat from the centre; up if left out.",
        RecipeSizes.Angle,
        border =>
            border.Ring.Start == Ring.Of(border.Ring.Radius).Start
                ? (Angle?)null
                : border.Ring.Start
    );

    private static readonly RecipeField<RingBorder, Angle?> Sweep = F.Maybe(
        "sweep",
        "How far round it goes, counter-clockwise; all round if left out.",
        RecipeSizes.Angle,
        border => border.Ring.IsWhole ? (Angle?)null : border.Ring.Sweep
    );

    private static readonly RecipeField<RingBorder, double?> Disc = F.Maybe(
        "disc",
        "Radius in mm of the round board that it is on.",
        RecipeSizes.Positive,
        border => border.Ring.DiscRadius
    );

    private static readonly RecipeField<RingBorder, double> Hole = F.Usually(
        "hole",
        0,
        "Radius in mm of a hole in that.",
        RecipeSizes.NotNegative,
        border => border.Ring.HoleRadius
    );

    private static readonly RecipeField<RingBorder, string?> Name = F.Maybe(
        "name",
        "What the piece is called.",
        RecipeSizes.Text,
        border => border.Ring.Name
    );

    private static readonly RecipeField<RingBorder, bool> FacingIn = F.Usually(
        "facingIn",
        false,
        "Whether the upper edge of the band is nearer to the centre.",
        RecipeSizes.Flag,
        border => border.IsFacingIn
    );

    private static readonly RecipeField<RingBorder, Fitting> Fit = F.Usually(
        "fitting",
        Fitting.Default,
        "How the band is fitted.",
        FittingType.Instance,
        border => border.Fitting
    );

    private static readonly RecipeField<RingBorder, BentStyle> Style = F.Usually(
        "bending",
        BentStyle.Default,
        "How the band is bent.",
        BendingType.Instance,
        border => border.Style
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, RingBorder>(
        "ring",
        "A band round a circle or an arc about (0, 0).",
        pattern => pattern as RingBorder,
        new(Radius, Place, Band, From, Sweep, Disc, Hole, Name, FacingIn, Fit, Style),
        given =>
        {
            var border = RingOf(given)
                .Border(given.Of(Band))
                .Fitted(_ => given.Of(Fit))
                .WithSides(given.Of(Style).Sides, given.Of(Style).Accuracy)
                .PitchOn(given.Of(Style).PitchLine);
            return given.Of(FacingIn) ? border.FacingIn() : border;
        }
    );

    private static Ring RingOf(GivenFields given)
    {
        var radius = given.Of(Radius);
        var ring = given.Of(Place) switch
        {
            RingPlace.Inside => Ring.Inside(radius),
            RingPlace.Outside => Ring.Outside(radius),
            _ => Ring.Of(radius),
        };
        if (given.Of(Sweep) is { } sweep)
            // Once in degrees for its checks, then to the last digit.
            ring = ring.Arc(0, sweep.Degrees).Spanning(ring.Start, sweep);
        if (given.Of(From) is { } from)
            ring = ring.Spanning(from, ring.Sweep);
        if (given.Of(Disc) is { } disc)
            ring = ring.OnDisc(disc, given.Of(Hole));
        else if (given.Has(Hole))
            throw new ArgumentException("A hole is one in a disc.", "hole");
        return given.Of(Name) is { } name ? ring.Named(name) : ring;
    }

    private enum RingPlace
    {
        Astride,
        Inside,
        Outside,
    }
}
