using F = PatternGen.RecipeFieldOf<PatternGen.Panel>;

namespace PatternGen;

/// <summary>Panels with a border, a field and a motif in the middle.</summary>
internal static class PanelKind
{
    private static readonly RecipeField<Panel, FrameBorder?> Border = F.Maybe(
        "border",
        "The border; it says how large the panel is.",
        FrameKind.Type,
        panel => panel.FrameBorder
    );

    private static readonly RecipeField<Panel, Frame?> Board = F.Maybe(
        "board",
        "Without a border: the board.",
        FrameType.Instance,
        panel => panel.FrameBorder is null ? panel.Board : null
    );

    private static readonly RecipeField<Panel, Pattern?> Field = F.Maybe(
        "field",
        "What is drawn between border and motif.",
        PatternType.Instance,
        panel => panel.FieldPattern
    );

    private static readonly RecipeField<Panel, double> FieldMargin = F.Usually(
        "fieldMargin",
        0,
        "Ground in mm that was left between border and field.",
        RecipeSizes.NotNegative,
        panel => panel.FieldMargin
    );

    private static readonly RecipeField<Panel, Pattern?> Centre = F.Maybe(
        "centre",
        "The motif in the middle, drawn about the origin.",
        PatternType.Instance,
        panel => panel.CentreMotif
    );

    private static readonly RecipeField<Panel, double> CentreGap = F.Usually(
        "centreGap",
        0,
        "Ground in mm round that motif.",
        RecipeSizes.NotNegative,
        panel => panel.CentreGap
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, Panel>(
        "panel",
        "A panel with a border, a field and a motif in the middle.",
        pattern => pattern as Panel,
        new(Border, Board, Field, FieldMargin, Centre, CentreGap),
        given =>
        {
            var panel = (given.Of(Border), given.Of(Board)) switch
            {
                ({ } border, null) => Panel.Of(border),
                (null, { } board) => Panel.On(board),
                _ => throw new ArgumentException("A panel has a border, or else a board."),
            };
            if (given.Of(Centre) is { } motif)
                panel = panel.Centre(motif, given.Of(CentreGap));
            return given.Of(Field) is { } field
                ? panel.Field(_ => field, given.Of(FieldMargin))
                : panel;
        }
    );
}
