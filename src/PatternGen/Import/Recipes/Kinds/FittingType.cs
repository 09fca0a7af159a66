using F = PatternGen.RecipeFieldOf<PatternGen.Fitting>;

namespace PatternGen;

/// <summary>How a band is fitted to a length.</summary>
internal static class FittingType
{
    private static readonly RecipeField<Fitting, double?> Pitch = F.Maybe(
        "pitch",
        "Length in mm of one repeat to aim at, in place of the band's own.",
        RecipeSizes.Positive,
        fitting => fitting.NominalPitch
    );

    private static readonly RecipeField<Fitting, (double Min, double Max)?> PitchBetween = F.Maybe(
        "pitchBetween",
        "Shortest and longest repeat in mm; within a third of the pitch aimed at if left out.",
        new PairType(RecipeSizes.Positive, "two lengths: [shortest, longest]"),
        fitting => fitting.PitchLimits
    );

    private static readonly RecipeField<Fitting, (double Left, double Right)> EndMargins =
        F.Usually(
            "endMargins",
            (0.0, 0.0),
            "Lengths in mm left uncarved at the left and the right end.",
            new PairType(RecipeSizes.NotNegative, "the lengths of two margins: [left, right]"),
            fitting => (fitting.LeftMargin, fitting.RightMargin)
        );

    private static readonly RecipeField<Fitting, RepeatParity> Repeats = F.Usually(
        "repeats",
        RepeatParity.Any,
        "Number of repeats: odd, so that one stands on the centre line; even, so that two meet there; or any.",
        new WordType<RepeatParity>(),
        fitting => fitting.Parity
    );

    private static readonly RecipeField<Fitting, double?> PitchOnGrid = F.Maybe(
        "pitchOnGrid",
        "A length in mm of which the pitch is a whole number; the end margins share what is left over.",
        RecipeSizes.Positive,
        fitting => fitting.PitchStep
    );

    private static readonly RecipeField<Fitting, StaggeredEnds> StaggeredRows = F.Usually(
        "staggeredRows",
        StaggeredEnds.HalfGaps,
        "How staggered rows end.",
        new WordType<StaggeredEnds>(),
        fitting => fitting.StaggeredEnds
    );

    private static readonly RecipeField<Fitting, EndRule> Ends = F.Usually(
        "ends",
        EndRule.AsTheyCome,
        "What is asked of the ends: mirrored, alike by half a turn, or the right half turned round at the middle.",
        new WordType<EndRule>(),
        fitting => fitting.Ends
    );

    private static readonly RecipeField<Fitting, CentreMotif?> Centre = F.Maybe(
        "centreMotif",
        "A motif in the middle, with equal bands left and right of it.",
        CentreMotif.Type,
        fitting => fitting.Centre is { } motif ? new CentreMotif(motif, fitting.CentreWidth) : null
    );

    internal static readonly ObjectType<Fitting> Instance = new(
        "fitting",
        "How a band is fitted to a length.",
        new(Pitch, PitchBetween, EndMargins, Repeats, PitchOnGrid, StaggeredRows, Ends, Centre),
        Make
    );

    private static Fitting Make(GivenFields given)
    {
        var (left, right) = given.Of(EndMargins);
        var fitting = Fitting
            .Default.EndMargins(left, right)
            .StaggeredRows(given.Of(StaggeredRows));
        if (given.Of(Pitch) is { } pitch)
            fitting = fitting.Pitch(pitch);
        if (given.Of(PitchBetween) is { } limits)
            fitting = fitting.PitchBetween(limits.Min, limits.Max);
        if (given.Of(PitchOnGrid) is { } step)
            fitting = fitting.PitchOnGrid(step);
        if (given.Of(Centre) is { } centre)
            fitting = fitting.CentreMotif(centre.Motif, centre.Width);
        fitting = given.Of(Repeats) switch
        {
            RepeatParity.Odd => fitting.RepeatOnCentre(),
            RepeatParity.Even => fitting.GapOnCentre(),
            _ => fitting,
        };
        return given.Of(Ends) switch
        {
            EndRule.Mirrored => fitting.MirroredEnds(),
            EndRule.HalfTurn => fitting.HalfTurnEnds(),
            EndRule.TurnedAtMiddle => fitting.TurnedAtMiddle(),
            _ => fitting,
        };
    }

    private sealed record CentreMotif(Pattern Motif, double Width)
    {
        private static readonly RecipeField<CentreMotif, Pattern> Pattern =
            RecipeFieldOf<CentreMotif>.Needed<Pattern>(
                "pattern",
                "The motif, drawn about the origin, which comes to lie on the middle of the band.",
                PatternType.Instance,
                centre => centre.Motif
            );

        private static readonly RecipeField<CentreMotif, double> Free =
            RecipeFieldOf<CentreMotif>.Needed(
                "width",
                "Length in mm that the bands leave free for it.",
                RecipeSizes.Positive,
                centre => centre.Width
            );

        internal static readonly ObjectType<CentreMotif> Type = new(
            "centre-motif",
            "A motif in the middle of a band.",
            new(Pattern, Free),
            given => new(given.Of(Pattern), given.Of(Free))
        );
    }
}
