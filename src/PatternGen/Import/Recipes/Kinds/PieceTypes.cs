using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Chips by themselves.</summary>
internal static class ChipType
{
    private static readonly RecipeField<ChipShape, Contour> Outline =
        RecipeFieldOf<ChipShape>.Needed(
            "outline",
            "The corners of the outline, in the order in which a knife goes round the chip.",
            RecipeSizes.Outline,
            chip => chip.Outline
        );

    private static readonly RecipeField<ChipShape, IReadOnlyList<Contour>?> Holes =
        RecipeFieldOf<ChipShape>.Maybe(
            "holes",
            "Where ground stays standing in it.",
            new ListType<Contour>(RecipeSizes.Outline, "a list of outlines"),
            chip => chip.Holes.Count > 0 ? chip.Holes : null
        );

    private static readonly RecipeField<ChipShape, ChipCut> Cut = RecipeFieldOf<ChipShape>.Usually(
        "cut",
        ChipCut.Walls,
        "How it is cut; walls all round if left out.",
        CutType.Instance,
        chip => chip.Cut
    );

    internal static readonly ObjectType<ChipShape> Instance = new(
        "chip",
        "A piece of wood to cut away, seen from above.",
        new(Outline, Holes, Cut),
        given =>
        {
            var shape = Pattern.ChipShapeOf(given.Of(Outline), given.Of(Holes) ?? []);
            var cut = given.Of(Cut);
            cut.RefuseUnfit(shape.Outline, shape.Holes.Count);
            return shape.WithCut(cut);
        }
    );
}

/// <summary>V grooves along lines.</summary>
internal static class LineCutType
{
    private static readonly RecipeField<LineCut, Chain> Path = RecipeFieldOf<LineCut>.Needed(
        "path",
        "The line at the bottom of the groove.",
        RecipeSizes.Line,
        cut => cut.Path
    );

    private static readonly RecipeField<LineCut, double> Width = RecipeFieldOf<LineCut>.Needed(
        "width",
        "Width in mm at the surface; of a tapering groove, where it is widest.",
        RecipeSizes.Positive,
        cut => cut.Width
    );

    private static readonly RecipeField<LineCut, bool> Tapering = RecipeFieldOf<LineCut>.Usually(
        "tapering",
        false,
        "Whether the groove tapers to a point at both ends.",
        RecipeSizes.Flag,
        cut => cut.Profile.IsTapering
    );

    private static readonly RecipeField<LineCut, double?> Over = RecipeFieldOf<LineCut>.Maybe(
        "over",
        "Length in mm of the taper at either end; half the line if left out.",
        RecipeSizes.Positive,
        cut => cut.Profile.Taper
    );

    internal static readonly ObjectType<LineCut> Instance = new(
        "line-cut",
        "A V groove along a line.",
        new(Path, Width, Tapering, Over),
        given =>
        {
            var (path, width, over) = (given.Of(Path), given.Of(Width), given.Of(Over));
            if (given.Of(Tapering))
                return LineCut.Tapering(path, width, over);
            return over is null
                ? new(path, width)
                : throw new ArgumentException("Only a tapering groove has a taper.", "over");
        }
    );
}

/// <summary>Lines of text.</summary>
internal static class LabelType
{
    private static readonly RecipeField<Label, string> Text = RecipeFieldOf<Label>.Needed(
        "text",
        "One line of text.",
        RecipeSizes.Text,
        label => label.Text
    );

    private static readonly RecipeField<Label, Point> At = RecipeFieldOf<Label>.Needed(
        "at",
        "Where the text starts, on its base line.",
        RecipeSizes.Point,
        label => label.At
    );

    private static readonly RecipeField<Label, double> Height = RecipeFieldOf<Label>.Needed(
        "height",
        "Height of a capital letter in mm.",
        RecipeSizes.Positive,
        label => label.Height
    );

    private static readonly RecipeField<Label, Angle> Turn = RecipeFieldOf<Label>.Usually(
        "turn",
        Angle.Zero,
        "Direction of the base line.",
        RecipeSizes.Angle,
        label => label.Turn
    );

    private static readonly RecipeField<Label, bool> Ends = RecipeFieldOf<Label>.Usually(
        "endsAtPlace",
        false,
        "Whether the text ends at its place in place of starting there, as once mirrored.",
        RecipeSizes.Flag,
        label => label.EndsAtPlace
    );

    private static readonly RecipeField<Label, bool> Hangs = RecipeFieldOf<Label>.Usually(
        "hangsFromPlace",
        false,
        "Whether the text hangs from its place in place of standing on it, as once mirrored.",
        RecipeSizes.Flag,
        label => label.HangsFromPlace
    );

    internal static readonly ObjectType<Label> Instance = new(
        "label",
        "A line of text on the drawing, never carved.",
        new(Text, At, Height, Turn, Ends, Hangs),
        given =>
        {
            var label = new Label(given.Of(Text), given.Of(At), given.Of(Height), given.Of(Turn));
            var (ends, hangs) = (given.Of(Ends), given.Of(Hangs));
            return ends || hangs ? label.Lying(ends, hangs) : label;
        }
    );
}
