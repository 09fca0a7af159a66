using F = PatternGen.RecipeFieldOf<PatternGen.TriangleRow>;

namespace PatternGen;

/// <summary>Rows of three-sided chips in a band.</summary>
internal static class RowType
{
    private static readonly RecipeField<TriangleRow, IReadOnlyList<int>> Between = F.Needed(
        "between",
        "Numbers of the rules below and above, counted from 0 at the lower edge of the band.",
        new ListType<int>(
            new CountType(0, TriangleBand.MaxRules - 1),
            "the numbers of two rules: [below, above]",
            least: 2,
            most: 2
        ),
        row => [row.LowerRule, row.UpperRule]
    );

    private static readonly RecipeField<TriangleRow, Pointing> Tips = F.Usually(
        "pointing",
        Pointing.Up,
        "Which way the tips point; up if left out.",
        new WordType<Pointing>(),
        row => row.Pointing
    );

    private static readonly RecipeField<TriangleRow, bool> Staggered = F.Usually(
        "staggered",
        false,
        "Whether the row is shifted by half a pitch.",
        RecipeSizes.Flag,
        row => row.IsStaggered
    );

    private static readonly RecipeField<TriangleRow, double> Lean = F.Usually(
        "lean",
        0,
        "Where the tip stands over the base: 0 over the middle, -1 over the left end, 1 over the right end.",
        new NumberType(-1, 1),
        row => row.Lean
    );

    private static readonly RecipeField<TriangleRow, (double Left, double Right)> Curved =
        F.Usually(
            "curved",
            (0.0, 0.0),
            "Heights in mm of the arcs of the left and the right side over their chords: positive bulges out of the chip, negative into it.",
            new PairType(RecipeSizes.Signed, "the heights of two arcs: [left, right]"),
            row => (row.LeftSagitta, row.RightSagitta)
        );

    private static readonly RecipeField<TriangleRow, double> HollowBase = F.Usually(
        "hollowBase",
        0,
        "How far the arc of the base rises into the chip, in mm.",
        RecipeSizes.NotNegative,
        row => -row.BaseSagitta
    );

    private static readonly RecipeField<TriangleRow, double> Gap = F.Usually(
        "gap",
        0,
        "Ground in mm left between the bases of neighbours.",
        RecipeSizes.NotNegative,
        row => row.Gap
    );

    private static readonly RecipeField<TriangleRow, ChipCut> Cut = F.Usually(
        "cut",
        ChipCut.Walls,
        "How the chips are cut; corner 0 is the tip. Walls all round if left out.",
        CutType.Instance,
        row => row.Cut
    );

    internal static readonly ObjectType<TriangleRow> Instance = new(
        "row",
        "A row of three-sided chips between two rules of a band.",
        new(Between, Tips, Staggered, Lean, Curved, HollowBase, Gap, Cut),
        Make
    );

    internal static bool AreAlike(TriangleRow a, TriangleRow b) =>
        a.LowerRule == b.LowerRule
        && a.UpperRule == b.UpperRule
        && a.Pointing == b.Pointing
        && a.IsStaggered == b.IsStaggered
        && a.Lean == b.Lean
        && a.LeftSagitta == b.LeftSagitta
        && a.RightSagitta == b.RightSagitta
        && a.BaseSagitta == b.BaseSagitta
        && a.Gap == b.Gap
        && a.Cut == b.Cut;

    private static TriangleRow Make(GivenFields given)
    {
        var rules = given.Of(Between);
        var (left, right) = given.Of(Curved);
        var cut = given.Of(Cut);
        if (cut.IsStabbed && cut.Apex != 0)
            throw new ArgumentException("The chips of a row are stabbed at corner 0, the tip.");
        var row = TriangleRow
            .Between(rules[0], rules[1])
            .Leaning(given.Of(Lean))
            .Curved(left, right)
            .HollowBase(given.Of(HollowBase))
            .WithGap(given.Of(Gap))
            .WithCut(cut);
        if (given.Of(Tips) == Pointing.Down)
            row = row.Down();
        return given.Of(Staggered) ? row.Staggered() : row;
    }
}
