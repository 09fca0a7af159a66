using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.Frame>;

namespace PatternGen;

/// <summary>Frames and lids, without what is carved on them.</summary>
internal static class FrameType
{
    private static readonly RecipeField<Frame, double?> Width = F.Maybe(
        "width",
        "Of a rectangle: width over all in mm.",
        RecipeSizes.Positive,
        frame => RectangleOf(frame)?.X
    );

    private static readonly RecipeField<Frame, double?> Height = F.Maybe(
        "height",
        "Of a rectangle: height over all in mm.",
        RecipeSizes.Positive,
        frame => RectangleOf(frame)?.Y
    );

    private static readonly RecipeField<Frame, IReadOnlyList<Point>?> Polygon = F.Maybe(
        "polygon",
        "Of other frames: the corners, in order.",
        new ListType<Point>(RecipeSizes.Point, "a list of corners", least: 3, most: 360),
        frame => RectangleOf(frame) is null ? frame.Outline.Corners : null
    );

    private static readonly RecipeField<Frame, double> Members = F.Needed(
        "members",
        "Width of the sides in mm.",
        RecipeSizes.Positive,
        frame => frame.MemberWidth
    );

    private static readonly RecipeField<Frame, bool> Opening = F.Usually(
        "opening",
        true,
        "Whether it is open in the middle; a lid is not.",
        RecipeSizes.Flag,
        frame => frame.HasOpening
    );

    private static readonly RecipeField<Frame, bool> OneBoard = F.Usually(
        "oneBoard",
        false,
        "Whether it is sawn out of one board, whose grain runs one way.",
        RecipeSizes.Flag,
        frame => frame is { IsOneBoard: true, HasOpening: true }
    );

    private static readonly RecipeField<Frame, double> CornerRadius = F.Usually(
        "cornerRadius",
        0,
        "Radius in mm of rounded corners.",
        RecipeSizes.NotNegative,
        frame => frame.CornerRadius
    );

    private static readonly RecipeField<Frame, string?> Name = F.Maybe(
        "name",
        "What the piece is called.",
        RecipeSizes.Text,
        frame => frame.Name
    );

    internal static readonly ObjectType<Frame> Instance = new(
        "frame",
        "A frame, or a lid.",
        new(Width, Height, Polygon, Members, Opening, OneBoard, CornerRadius, Name),
        Make
    );

    private static Frame Make(GivenFields given)
    {
        var frame = Outline(given);
        if (given.Of(CornerRadius) > 0)
            frame = frame.Rounded(given.Of(CornerRadius));
        if (!given.Of(Opening))
            frame = frame.Lid();
        else if (given.Of(OneBoard))
            frame = frame.OneBoard();
        return given.Of(Name) is { } name ? frame.Named(name) : frame;
    }

    private static Frame Outline(GivenFields given)
    {
        var members = given.Of(Members);
        return (given.Of(Width), given.Of(Height), given.Of(Polygon)) switch
        {
            ({ } width, { } height, null) => Frame.Of(width, height, members),
            (null, null, { } corners) => Frame.Polygon(corners, members),
            _ => throw new ArgumentException(
                "A frame has a width and a height, or it is a polygon."
            ),
        };
    }

    private static Point? RectangleOf(Frame frame) =>
        frame.Outline.Corners is [var low, var right, var high, var left]
        && low == Point.Origin
        && right == new Point(high.X, 0)
        && left == new Point(0, high.Y)
            ? high
            : null;
}
