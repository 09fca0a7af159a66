using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Where the lattice of a field lies, and what is chosen of its cells.</summary>
internal static class FieldParts
{
    internal static readonly FieldAlignment UsualAlignment = new FieldAlignment.OnMiddle(
        FieldMiddle.Extents,
        null
    );

    private static readonly RecipeField<CellChoice, CellScheme> ChoiceScheme =
        RecipeFieldOf<CellChoice>.Needed(
            "scheme",
            "How cells are told apart.",
            new WordType<CellScheme>(),
            choice => choice.Scheme
        );

    private static readonly RecipeField<CellChoice, IReadOnlyList<int>> Numbers =
        RecipeFieldOf<CellChoice>.Needed(
            "numbers",
            "The numbers of cells in that scheme, from 0.",
            new ListType<int>(new CountType(0), "a list of numbers", least: 1),
            choice => choice.Numbers
        );

    internal static readonly ObjectType<CellChoice> Choice = new(
        "cells",
        "A choice of cells.",
        new(ChoiceScheme, Numbers),
        given => new(given.Of(ChoiceScheme), [.. given.Of(Numbers)])
    );

    internal static readonly ObjectType<CellTurns<Pattern>> Motifs = InTurn(
        "cell-motifs",
        "Motifs that take turns in the cells.",
        "motifs",
        PatternType.Instance
    );

    internal static readonly ObjectType<CellTurns<Angle>> Turns = InTurn(
        "cell-turns",
        "Turns that take turns in the cells.",
        "angles",
        RecipeSizes.Angle
    );

    private static readonly RecipeField<FieldAlignment.OnMiddle, FieldPoint?> Point =
        RecipeFieldOf<FieldAlignment.OnMiddle>.Maybe(
            "point",
            "What of a cell lies there.",
            new WordType<FieldPoint>(),
            on => on.Point
        );

    private static readonly RecipeField<FieldAlignment.OnMiddle, FieldMiddle> Middle =
        RecipeFieldOf<FieldAlignment.OnMiddle>.Usually(
            "of",
            FieldMiddle.Extents,
            "Of what it is the middle.",
            new WordType<FieldMiddle>(),
            on => on.Middle
        );

    private static readonly RecipeField<FieldAlignment.AlongSide, int> Ring =
        RecipeFieldOf<FieldAlignment.AlongSide>.Usually(
            "ring",
            0,
            "Number of the outline, from 0.",
            new CountType(0),
            along => along.Ring
        );

    private static readonly RecipeField<FieldAlignment.AlongSide, int> Side =
        RecipeFieldOf<FieldAlignment.AlongSide>.Needed(
            "side",
            "Number of its side, from 0.",
            new CountType(0),
            along => along.Side
        );

    private static readonly RecipeField<FieldAlignment.FromPlace, Point> Place =
        RecipeFieldOf<FieldAlignment.FromPlace>.Needed(
            "place",
            "Where a corner of cells lies.",
            RecipeSizes.Point,
            from => from.Place
        );

    private static readonly RecipeField<FieldAlignment.FromPlace, Angle> Turn =
        RecipeFieldOf<FieldAlignment.FromPlace>.Usually(
            "turn",
            Angle.Zero,
            "By how much the lattice is turned there.",
            RecipeSizes.Angle,
            from => from.Turn
        );

    internal static readonly RecipeChoice<FieldAlignment> Alignment = new(
        "alignment",
        "where a lattice lies",
        "kind",
        new RecipeKind<FieldAlignment, FieldAlignment.OnMiddle>(
            "on-middle",
            "On the middle of the outline.",
            alignment => alignment as FieldAlignment.OnMiddle,
            new(Point, Middle),
            given => new FieldAlignment.OnMiddle(given.Of(Middle), given.Of(Point))
        ),
        new RecipeKind<FieldAlignment, FieldAlignment.AlongSide>(
            "along-side",
            "Along a straight side of the outline.",
            alignment => alignment as FieldAlignment.AlongSide,
            new(Side, Ring),
            given => new FieldAlignment.AlongSide(given.Of(Ring), given.Of(Side))
        ),
        new RecipeKind<FieldAlignment, FieldAlignment.FromPlace>(
            "from-place",
            "From a place.",
            alignment => alignment as FieldAlignment.FromPlace,
            new(Place, Turn),
            given => new FieldAlignment.FromPlace(given.Of(Place), given.Of(Turn))
        )
    );

    private static ObjectType<CellTurns<T>> InTurn<T>(
        string name,
        string about,
        string values,
        RecipeType<T> type
    )
    {
        var scheme = RecipeFieldOf<CellTurns<T>>.Usually(
            "scheme",
            CellScheme.Alike,
            "How cells are told apart.",
            new WordType<CellScheme>(),
            turns => turns.Scheme
        );
        var all = RecipeFieldOf<CellTurns<T>>.Needed<IReadOnlyList<T>>(
            values,
            "One for each number of the scheme.",
            new ListType<T>(type, "a list", least: 1),
            turns => turns.Values
        );
        return new(
            name,
            about,
            new(scheme, all),
            given => new(given.Of(scheme), [.. given.Of(all)])
        );
    }
}
