using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.CarvedField>;

namespace PatternGen;

/// <summary>Outlines filled with a lattice of cells.</summary>
internal static class FieldKind
{
    private static readonly RecipeField<CarvedField, IReadOnlyList<Contour>> Outline = F.Needed(
        "outline",
        "The outlines of what is filled; holes in it run clockwise.",
        new ListType<Contour>(RecipeSizes.Outline, "a list of outlines", least: 1),
        field => field.Design.Outline.Contours
    );

    private static readonly RecipeField<CarvedField, FieldLattice> Lattice = F.Needed(
        "lattice",
        "What it is filled with.",
        new WordType<FieldLattice>(),
        field => field.Design.Sizes.Family
    );

    private static readonly RecipeField<CarvedField, double> Width = F.Needed(
        "width",
        "Width of a cell in mm; of triangles, squares and hexagons the side, of circles the radius, of basket weave a strip.",
        RecipeSizes.Positive,
        field => field.Design.Sizes.Width
    );

    private static readonly RecipeField<CarvedField, double?> Height = F.Maybe(
        "height",
        "Height of diamonds, hourglasses and rows of scales in mm.",
        RecipeSizes.Positive,
        field => HasHeight(field.Design.Sizes.Family) ? field.Design.Sizes.Height : null
    );

    private static readonly RecipeField<CarvedField, int> Strips = F.Usually(
        "strips",
        1,
        "Number of strips in a square of basket weave.",
        new CountType(1, 100),
        field => field.Design.Sizes.Strips
    );

    private static readonly RecipeField<CarvedField, CircleParts> Parts = F.Usually(
        "parts",
        CircleParts.Petals,
        "What of overlapping circles is carved.",
        new WordType<CircleParts>(),
        field => field.Design.Sizes.Parts
    );

    private static readonly RecipeField<CarvedField, HourglassTurn> Turn = F.Usually(
        "turn",
        HourglassTurn.ByTurns,
        "How hourglasses stand.",
        new WordType<HourglassTurn>(),
        field => field.Design.Sizes.Turn
    );

    private static readonly RecipeField<CarvedField, FieldRim> Rim = F.Usually(
        "rim",
        FieldRim.WholeCells,
        "What becomes of cells at the edge.",
        new WordType<FieldRim>(),
        field => field.Design.Rim
    );

    private static readonly RecipeField<CarvedField, double?> Narrowest = F.Maybe(
        "narrowest",
        "Width in mm under which clipped cells are left out.",
        RecipeSizes.NotNegative,
        field => field.Design.Narrowest
    );

    private static readonly RecipeField<CarvedField, double?> Smallest = F.Maybe(
        "smallest",
        "Size of shrunk cells under which they are left out, as a share of a whole one.",
        RecipeSizes.Share,
        field => field.Design.Rim == FieldRim.ShrunkCells ? field.Design.Smallest : null
    );

    private static readonly RecipeField<CarvedField, double> BorderGap = F.Usually(
        "borderGap",
        0,
        "Ground in mm along the outline.",
        RecipeSizes.NotNegative,
        field => field.Design.BorderGap
    );

    private static readonly RecipeField<CarvedField, double> RidgeGap = F.Usually(
        "ridgeGap",
        0,
        "Ground in mm between cells.",
        RecipeSizes.NotNegative,
        field => field.Design.RidgeGap
    );

    private static readonly RecipeField<CarvedField, FieldAlignment?> Alignment = F.Maybe(
        "alignment",
        "Where the lattice lies; on the middle of the extents if left out.",
        FieldParts.Alignment,
        field => field.Design.Alignment == FieldParts.UsualAlignment ? null : field.Design.Alignment
    );

    private static readonly RecipeField<CarvedField, Angle> LatticeTurn = F.Usually(
        "latticeTurn",
        Angle.Zero,
        "By how much the lattice is turned.",
        RecipeSizes.Angle,
        field => field.Design.LatticeTurn
    );

    private static readonly RecipeField<CarvedField, CellDivision> Division = F.Usually(
        "division",
        CellDivision.Whole,
        "How cells are divided into chips.",
        new WordType<CellDivision>(),
        field => field.Design.Division
    );

    private static readonly RecipeField<CarvedField, CellChoice?> Carved = F.Maybe(
        "carved",
        "Which cells are carved; all if left out.",
        FieldParts.Choice,
        field => ReferenceEquals(field.Design.Carved, CellChoice.All) ? null : field.Design.Carved
    );

    private static readonly RecipeField<CarvedField, CellTurns<Pattern>?> Motifs = F.Maybe(
        "motifs",
        "Motifs in the cells, in place of the cells themselves.",
        FieldParts.Motifs,
        field => field.Design.Motifs.Values.Length > 0 ? field.Design.Motifs : null
    );

    private static readonly RecipeField<CarvedField, CellTurns<Angle>?> Turns = F.Maybe(
        "turning",
        "By how much the content of cells is turned.",
        FieldParts.Turns,
        field => field.Design.Turns.Values.Length > 0 ? field.Design.Turns : null
    );

    private static readonly RecipeField<CarvedField, CellChoice?> Mirrored = F.Maybe(
        "mirrored",
        "In which cells the content is mirrored.",
        FieldParts.Choice,
        field => field.Design.Mirrored.Numbers.Length > 0 ? field.Design.Mirrored : null
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, CarvedField>(
        "field",
        "An outline filled with a lattice of chips or motifs.",
        pattern => pattern as CarvedField,
        new(
            Outline,
            Lattice,
            Width,
            Height,
            Strips,
            Parts,
            Turn,
            Rim,
            Narrowest,
            Smallest,
            BorderGap,
            RidgeGap,
            Alignment,
            LatticeTurn,
            Division,
            Carved,
            Motifs,
            Turns,
            Mirrored
        ),
        Make
    );

    private static CarvedField Make(GivenFields given)
    {
        var field = Filled(Field.Within(new Region(given.Of(Outline))), given)
            .BorderGap(given.Of(BorderGap))
            .RidgeGap(given.Of(RidgeGap))
            .LatticeTurned(given.Of(LatticeTurn))
            .Divided(given.Of(Division));
        if (given.Of(Rim) == FieldRim.ClippedCells)
            field = field.ClippedCells(given.Of(Narrowest));
        else if (given.Of(Rim) == FieldRim.ShrunkCells)
            field = given.Of(Smallest) is { } share
                ? field.ShrunkCells(share)
                : field.ShrunkCells();
        if (given.Of(Carved) is { } carved)
            field = field.Carve(carved.Scheme, carved.Numbers);
        if (given.Of(Mirrored) is { } mirrored)
            field = field.Mirroring(mirrored.Scheme, mirrored.Numbers);
        if (given.Of(Motifs) is { } motifs)
            field = field.Cells(motifs.Scheme, motifs.Values);
        if (given.Of(Turns) is { } turns)
            // Once in degrees for its checks, then to the last digit.
            field = new(
                field
                    .Turning(turns.Scheme, [.. turns.Values.Select(turn => turn.Degrees)])
                    .Design with
                {
                    Turns = turns,
                }
            );
        if (given.Of(Alignment) is FieldAlignment.AlongSide along)
            return field.AlongSide(along.Side, along.Ring);
        return given.Of(Alignment) is { } alignment
            ? new(field.Design with { Alignment = alignment })
            : field;
    }

    private static CarvedField Filled(Field field, GivenFields given)
    {
        var (width, height) = (given.Of(Width), given.Of(Height));
        return given.Of(Lattice) switch
        {
            FieldLattice.Triangles => field.Triangles(width),
            FieldLattice.Squares => field.Squares(width),
            FieldLattice.Hexagons => field.Hexagons(width),
            FieldLattice.Diamonds => field.Diamonds(width, height ?? width),
            FieldLattice.Circles => field.Circles(width, CircleGrid.Triangular, given.Of(Parts)),
            FieldLattice.CirclesOnSquares => field.Circles(
                width,
                CircleGrid.Square,
                given.Of(Parts)
            ),
            FieldLattice.Scales => field.Scales(width, height),
            FieldLattice.BasketWeave => field.BasketWeave(width, given.Of(Strips)),
            _ => field.Hourglasses(width, height, given.Of(Turn)),
        };
    }

    private static bool HasHeight(FieldLattice lattice) =>
        lattice is FieldLattice.Diamonds or FieldLattice.Scales or FieldLattice.Hourglasses;
}
