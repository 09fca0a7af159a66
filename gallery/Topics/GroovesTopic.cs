using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>Where a V bit goes to cut a rosette, as a file for a router and as a picture of it from above.</summary>
internal sealed class GroovesTopic(string folder) : ITopic
{
    /// <summary>Width in mm of a path in the picture.</summary>
    private const double PathWidth = 0.25;

    private static Pattern Rim =>
        Pattern.OfLineCuts(
            new LineCut(new Chain([new(-27, 0, 1), new(27, 0, 1), new(-27, 0)]), width: 1.5)
        );

    private static Pattern Wood => Pattern.OfStock(Contour.Rectangle(new(-32, -32), new(32, 32)));

    private static Pattern Board =>
        Pattern
            .Combine(Rosette.Petals(6, radius: 24).Carve(part => part.IsPetal), Rim, Wood)
            .Named("Six petals in a rim");

    private static GroovePaths Paths =>
        Board.GroovePaths(VBit.Of(includedDegrees: 90, diameter: 12));

    public string Title => "Groove paths for a router";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            new("grooves.dxf", (path, stop) => Paths.SaveAsync(path, cancellation: stop)),
            new("grooves.svg", (path, stop) => FromAbove.SaveAsync(path, cancellation: stop)),
            Work.Picture("grooves.png", folder, of: "grooves.svg"),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [new("grooves.png", string.Join(". ", Paths.Notes()), ["grooves.dxf", "grooves.svg"])];

    /// <summary>The outlines of the chips as lines, and the paths within them.</summary>
    private static Pattern FromAbove =>
        Pattern.Combine(
            Pattern.OfLayoutLines(Board.Chips.Select(chip => Open(chip.Outline))),
            Pattern.OfLineCuts(
                Paths.Paths.Select(path => new LineCut(
                    new Chain(path.Places.Select(place => new Vertex(place.Point))),
                    PathWidth
                ))
            ),
            Wood
        );

    private static Chain Open(Contour outline) => Chain.Of(outline.Segments);
}
