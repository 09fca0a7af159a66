namespace PatternGen.Gallery.Topics;

/// <summary>A border on a rail, in every form that a carver or a machine needs.</summary>
internal sealed class RailTopic(RailBorder border, string folder) : ITopic
{
    /// <summary>The rail of the samples: a sideboard's, 742.5 mm between its shoulders.</summary>
    internal static RailBorder SideboardRail =>
        Rail.Of(length: 742.5, width: 36)
            .Named("Sideboard, front rail")
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
            .EndMargins(6);

    public string Title => "A border for a measured rail";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            new("rail.svg", (path, stop) => border.SaveAsync(path, cancellation: stop)),
            new(
                "rail-print.svg",
                (path, stop) => border.SaveAsync(path, For.Paper, cancellation: stop)
            ),
            new("rail.dxf", (path, stop) => border.SaveAsync(path, cancellation: stop)),
            new("rail-lines.dxf", (path, stop) => border.SaveAsync(path, EachSideOnce, stop)),
            Work.Picture("rail.png", folder, of: "rail.svg"),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [
            new(
                "rail.png",
                string.Join(". ", border.Caption()),
                ["rail.svg", "rail-print.svg", "rail.dxf", "rail-lines.dxf"]
            ),
        ];

    private static SaveOptions EachSideOnce =>
        SaveOptions.Default.WithSharedSides(SharedSides.Once);
}
