using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.FrameBorder>;
using R = PatternGen.RecipeFieldOf<PatternGen.FrameRing>;

namespace PatternGen;

/// <summary>Bands round frames.</summary>
internal static class FrameKind
{
    private const string About = "One or more bands round a frame or a lid.";

    private static readonly RecipeField<FrameRing, TriangleBand> Band = R.Needed(
        "band",
        "The band.",
        BandType.Instance,
        ring => ring.Band
    );

    private static readonly RecipeField<FrameRing, double> FromEdge = R.Needed(
        "fromEdge",
        "Distance in mm from the outer edge to the lowest rule.",
        RecipeSizes.NotNegative,
        ring => ring.From
    );

    private static readonly RecipeField<FrameRing, Fitting> Fit = R.Usually(
        "fitting",
        Fitting.Default,
        "How the band is fitted to each side.",
        FittingType.Instance,
        ring => ring.Fitting
    );

    private static readonly ObjectType<FrameRing> Ring = new(
        "frame-ring",
        "A band round a frame.",
        new(Band, FromEdge, Fit),
        given => new(given.Of(Band), given.Of(FromEdge), given.Of(Fit))
    );

    private static readonly RecipeField<FrameBorder, Frame> Board = F.Needed(
        "frame",
        "The frame.",
        FrameType.Instance,
        border => border.Frame
    );

    private static readonly RecipeField<FrameBorder, IReadOnlyList<FrameRing>> Rings = F.Needed(
        "rings",
        "The bands, from the outer edge in.",
        new ListType<FrameRing>(Ring, "a list of bands", least: 1, most: 100),
        border => border.Design.Rings
    );

    private static readonly RecipeField<FrameBorder, FrameCorner> Corner = F.Usually(
        "corner",
        FrameCorner.Mitre,
        "How the band turns corners.",
        new WordType<FrameCorner>(),
        border => border.Corner
    );

    private static readonly RecipeField<FrameBorder, Pattern?> Motif = F.Maybe(
        "motif",
        "The motif in corner blocks.",
        PatternType.Instance,
        border => border.Design.Motif
    );

    private static readonly RecipeField<FrameBorder, double?> Size = F.Maybe(
        "size",
        "Side of corner blocks in mm.",
        RecipeSizes.Positive,
        border => border.Design.Motif is null ? null : border.Design.BlockSize
    );

    private static readonly RecipeField<FrameBorder, double?> Margin = F.Maybe(
        "margin",
        "Ground in mm between bands and corner blocks, or where sides are butted.",
        RecipeSizes.NotNegative,
        border =>
            border.Corner is FrameCorner.Block or FrameCorner.Butt ? border.Design.Margin : null
    );

    private static readonly RecipeField<FrameBorder, FrameTurn> MotifTurn = F.Usually(
        "turn",
        FrameTurn.ToTheCorner,
        "Which way the motif in corner blocks looks.",
        new WordType<FrameTurn>(),
        border => border.Design.Motif is null ? FrameTurn.ToTheCorner : border.Design.MotifTurn
    );

    private static readonly RecipeField<FrameBorder, FrameThrough> Through = F.Usually(
        "through",
        FrameThrough.Upright,
        "Which sides run through where they are butted.",
        new WordType<FrameThrough>(),
        border => border.Corner == FrameCorner.Butt ? border.Design.Through : FrameThrough.Upright
    );

    private static readonly RecipeField<FrameBorder, double?> Radius = F.Maybe(
        "radius",
        "Radius in mm round which bands bend; that of the frame's corners if left out.",
        RecipeSizes.Positive,
        border => border.Corner == FrameCorner.Bent ? border.Design.Radius : null
    );

    private static readonly RecipeField<FrameBorder, bool> SamePitch = F.Usually(
        "samePitch",
        false,
        "Whether all sides share one pitch.",
        RecipeSizes.Flag,
        border => border.Design.SamePitch
    );

    private static readonly RecipeField<FrameBorder, bool> Mirrored = F.Usually(
        "mirrored",
        true,
        "Whether the sides are mirrored in the middle lines, and do not run round.",
        RecipeSizes.Flag,
        border => border.Design.Mirrored
    );

    private static readonly RecipeFields<FrameBorder> Table = new(
        Board,
        Rings,
        Corner,
        Motif,
        Size,
        Margin,
        MotifTurn,
        Through,
        Radius,
        SamePitch,
        Mirrored
    );

    /// <summary>The border of a panel.</summary>
    internal static readonly ObjectType<FrameBorder> Type = new("frame-border", About, Table, Make);

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, FrameBorder>(
        "frame",
        About,
        pattern => pattern as FrameBorder,
        Table,
        Make
    );

    private static FrameBorder Make(GivenFields given)
    {
        var frame = given.Of(Board);
        double taken = 0;
        foreach (var ring in given.Of(Rings))
        {
            if (ring.From < taken)
                throw new ArgumentException(
                    $"A band from {Guard.Text(ring.From)} mm on would lie on the one before, which ends at {Guard.Text(taken)} mm.",
                    "rings"
                );
            frame.RefuseOver(ring.From, frame.Room(ring.Band, 0), ring.Band);
            taken = ring.To;
        }
        var border = Cornered(new(frame, new(given.Of(Rings))), given);
        if (given.Of(SamePitch))
            border = border.SamePitch();
        return given.Of(Mirrored) ? border : border.RunningRound();
    }

    private static FrameBorder Cornered(FrameBorder border, GivenFields given)
    {
        var corner = given.Of(Corner);
        if ((corner == FrameCorner.Block) != given.Has(Motif))
            throw new ArgumentException(
                "A motif goes with \"corner\": \"block\", and that with a motif.",
                "motif"
            );
        return corner switch
        {
            FrameCorner.Block => border.Corners(
                given.Of(Motif)!,
                given.Of(Size),
                given.Of(Margin) ?? 0,
                given.Of(MotifTurn)
            ),
            FrameCorner.Wrapped => border.Wrapped(),
            FrameCorner.Butt => border.Butted(given.Of(Through), given.Of(Margin)),
            FrameCorner.Bent => border.Bent(given.Of(Radius)),
            _ => border.Mitred(),
        };
    }
}
