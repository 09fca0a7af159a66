using F = PatternGen.RecipeFieldOf<PatternGen.RosetteMaking>;

namespace PatternGen;

/// <summary>Rosettes, each by the method that makes it and what that is asked for.</summary>
internal static class RosetteKinds
{
    private static readonly RecipeField<RosetteMaking, int> Count = F.Needed(
        "count",
        "Number of petals, points, rays or circles; of overlaid petals, in one set.",
        new CountType(Rosette.FewestParts, Rosette.MostParts),
        made => made.Count
    );

    private static readonly RecipeField<RosetteMaking, double> Radius = F.Needed(
        "radius",
        "Radius of the rim in mm.",
        RecipeSizes.Positive,
        made => made.Radius
    );

    private static readonly RecipeField<RosetteMaking, double?> Centre = F.Maybe(
        "centre",
        "Diameter in mm of the disc that stays plain in the middle, 0 for none.",
        RecipeSizes.NotNegative,
        made => made.Centre
    );

    private static readonly RecipeField<RosetteMaking, double?> Inner = F.Maybe(
        "inner",
        "Radius of the inner circle in mm.",
        RecipeSizes.Positive,
        made => made.Inner
    );

    private static readonly RecipeField<RosetteMaking, double> InnerNeeded = F.Needed(
        "inner",
        "Radius of the inner circle in mm.",
        RecipeSizes.Positive,
        made => made.Inner ?? 0
    );

    private static readonly RecipeField<RosetteMaking, double> Ridge = F.Usually(
        "ridge",
        1,
        "Width in mm of the ridge between petals at the inner circle.",
        RecipeSizes.NotNegative,
        made => made.Ridge
    );

    private static readonly RecipeField<RosetteMaking, int> Sets = F.Needed(
        "sets",
        "Number of sets of petals over each other.",
        new CountType(2),
        made => made.Sets
    );

    private static readonly RecipeField<RosetteMaking, PetalCrossing> Crossing = F.Usually(
        "crossing",
        PetalCrossing.Whole,
        "What becomes of petals where they lie over others.",
        new WordType<PetalCrossing>(),
        made => made.Crossing
    );

    private static readonly RecipeField<RosetteMaking, int> Every = F.Needed(
        "every",
        "Which point each is joined to: 2 for every second.",
        new CountType(2),
        made => made.Every
    );

    private static readonly RecipeField<RosetteMaking, WhirlTurn> Turn = F.Usually(
        "turn",
        WhirlTurn.Left,
        "Which way the curved radii turn.",
        new WordType<WhirlTurn>(),
        made => made.Turn
    );

    private static readonly RecipeField<RosetteMaking, double?> ArcRadius = F.Maybe(
        "arcRadius",
        "Radius of the curved radii in mm.",
        RecipeSizes.Positive,
        made => made.ArcRadius
    );

    private static readonly RecipeField<RosetteMaking, double> From = F.Usually(
        "from",
        0,
        "Direction of the first radius in degrees.",
        RecipeSizes.Degrees,
        made => made.FromDegrees
    );

    private static readonly RecipeField<RosetteMaking, double> To = F.Usually(
        "to",
        180,
        "Direction of the last radius in degrees.",
        RecipeSizes.Degrees,
        made => made.ToDegrees
    );

    private static readonly RecipeField<RosetteMaking, CompassDrawing> Outer = F.Needed(
        "outer",
        "The rosette round the other.",
        DrawingType.Instance,
        made => made.Outer!
    );

    private static readonly RecipeField<RosetteMaking, CompassDrawing> Inside = F.Needed(
        "inside",
        "The rosette in its plain centre.",
        DrawingType.Instance,
        made => made.Inside!
    );

    private static readonly RecipeField<RosetteMaking, CompassDrawing> Within = F.Needed(
        "rosette",
        "The rosette.",
        DrawingType.Instance,
        made => made.Outer!
    );

    private static readonly RecipeField<RosetteMaking, int> Sides = F.Needed(
        "sides",
        "Number of sides of the polygon.",
        new CountType(3),
        made => made.Sides
    );

    private static readonly RecipeField<RosetteMaking, double> Gap = F.Usually(
        "gap",
        0,
        "Ground in mm between the rim and the middles of the sides.",
        RecipeSizes.NotNegative,
        made => made.Gap
    );

    internal static IReadOnlyList<RecipeKind<CompassDrawing>> All { get; } =
    [
        Of(
            RosetteFamily.Petals,
            "Petals from the centre to the rim.",
            new(Count, Radius, Centre),
            given => Rosette.Petals(given.Of(Count), given.Of(Radius), given.Of(Centre))
        ),
        Of(
            RosetteFamily.Overlaid,
            "Sets of petals over each other.",
            new(Sets, Count, Radius, Crossing, Centre),
            given =>
                Rosette.Overlaid(
                    given.Of(Sets),
                    given.Of(Count),
                    given.Of(Radius),
                    given.Of(Crossing),
                    given.Of(Centre)
                )
        ),
        Of(
            RosetteFamily.TwoLevel,
            "Petals outside a circle, and others within it between them.",
            new(Count, Radius, Inner, Centre),
            given =>
                Rosette.TwoLevel(
                    given.Of(Count),
                    given.Of(Radius),
                    given.Of(Inner),
                    given.Of(Centre)
                )
        ),
        Of(
            RosetteFamily.PetalRing,
            "Petals between two circles.",
            new(Count, Radius, InnerNeeded, Ridge),
            given =>
                Rosette.PetalRing(
                    given.Of(Count),
                    given.Of(Radius),
                    given.Of(InnerNeeded),
                    given.Of(Ridge)
                )
        ),
        Of(
            RosetteFamily.Wreathed,
            "Petals, and leaves along the rim.",
            new(Count, Radius, Centre),
            given => Rosette.Wreathed(given.Of(Count), given.Of(Radius), given.Of(Centre))
        ),
        Of(
            RosetteFamily.Scalloped,
            "Petals in a rim of scallops.",
            new(Count, Radius, Inner, Centre),
            given =>
                Rosette.Scalloped(
                    given.Of(Count),
                    given.Of(Radius),
                    given.Of(Inner),
                    given.Of(Centre)
                )
        ),
        Of(
            RosetteFamily.Star,
            "Points of the rim joined straight.",
            new(Count, Every, Radius),
            given => Rosette.Star(given.Of(Count), given.Of(Every), given.Of(Radius))
        ),
        Of(
            RosetteFamily.SplitStar,
            "A pointed star with every point split.",
            new(Count, Radius, Inner, Centre),
            given =>
                Rosette.SplitStar(
                    given.Of(Count),
                    given.Of(Radius),
                    given.Of(Inner),
                    given.Of(Centre)
                )
        ),
        Of(
            RosetteFamily.Rays,
            "Rays from an inner circle to the rim.",
            new(Count, Radius, Inner),
            given => Rosette.Rays(given.Of(Count), given.Of(Radius), given.Of(Inner))
        ),
        Of(
            RosetteFamily.Diamonds,
            "Diamonds between an inner circle and the rim.",
            new(Count, Radius, Inner),
            given => Rosette.Diamonds(given.Of(Count), given.Of(Radius), given.Of(Inner))
        ),
        Of(
            RosetteFamily.Whirl,
            "Curved radii.",
            new(Count, Radius, Turn, ArcRadius, Centre),
            given =>
                Rosette.Whirl(
                    given.Of(Count),
                    given.Of(Radius),
                    given.Of(Turn),
                    given.Of(ArcRadius),
                    given.Of(Centre)
                )
        ),
        Of(
            RosetteFamily.OverlappingCircles,
            "Circles round a plain centre that overlap.",
            new(Count, Radius, Centre),
            given => Rosette.OverlappingCircles(given.Of(Count), given.Of(Radius), given.Of(Centre))
        ),
        Of(
            RosetteFamily.TouchingCircles,
            "Circles round a plain centre that touch.",
            new(Count, Radius),
            given => Rosette.TouchingCircles(given.Of(Count), given.Of(Radius))
        ),
        Of(
            RosetteFamily.Fan,
            "Part of a rosette of petals, between two radii.",
            new(Count, Radius, From, To, Centre),
            given =>
                Rosette.Fan(
                    given.Of(Count),
                    given.Of(Radius),
                    given.Of(From),
                    given.Of(To),
                    given.Of(Centre)
                )
        ),
        Of(
            RosetteFamily.Nested,
            "A rosette in the plain centre of another.",
            new(Outer, Inside),
            given =>
                Rosette.Nested(
                    IsRosette(given.Of(Outer), "outer"),
                    IsRosette(given.Of(Inside), "inside")
                )
        ),
        Of(
            RosetteFamily.WithinPolygon,
            "A rosette within a polygon.",
            new(Within, Sides, Gap),
            given =>
                IsRosette(given.Of(Within), "rosette").WithinPolygon(given.Of(Sides), given.Of(Gap))
        ),
    ];

    private static RecipeKind<CompassDrawing> Of(
        RosetteFamily family,
        string about,
        RecipeFields<RosetteMaking> table,
        Func<GivenFields, Rosette> make
    ) =>
        new RecipeKind<CompassDrawing, RosetteMaking>(
            CodeNames.Of(family),
            about,
            drawing =>
                drawing is Rosette rosette && rosette.Family == family ? rosette.Making : null,
            table,
            make
        );

    private static Rosette IsRosette(CompassDrawing drawing, string field) =>
        drawing as Rosette
        ?? throw new ArgumentException("A figure of lines is no rosette.", field);
}
