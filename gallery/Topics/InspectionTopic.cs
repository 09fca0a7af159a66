using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>A board with faults made on purpose, and what an inspection says of it before any wood is touched.</summary>
internal sealed class InspectionTopic(string folder) : ITopic
{
    /// <summary>Each chip but the first two is wrong in a way of its own.</summary>
    private static Pattern Board =>
        Pattern
            .Combine(
                Pattern.OfChips(
                    Petal(14, 60, 26, 0.16),
                    Triangle(34, 60, 8),
                    // Far too wide to be comfortable, and too deep for the wood.
                    Petal(62, 60, 34, 0.7),
                    // Two that nearly touch.
                    Triangle(20, 32, 9),
                    Triangle(29.4, 32, 9),
                    // Two that overlap.
                    Petal(49.5, 33, 22, 0.22),
                    Petal(53.5, 33, 22, 0.22),
                    // A tip like a needle.
                    Contour.Polygon(new Point(68, 24), new Point(96, 25.5), new Point(68, 28)),
                    // Too small, and too near the edge.
                    Triangle(12, 12, 2.4),
                    Triangle(98, 68, 7),
                    // A hollow that no blade follows.
                    new Contour(new Vertex(30, 10, -0.6), new Vertex(36, 10), new Vertex(33, 20))
                ),
                Pattern.OfStock(Contour.Rectangle(new(0, 0), new(104, 78)))
            )
            .Named("Board with faults");

    private static InspectionReport Report =>
        Board.Inspect(Knife.Held(degrees: 65), Stock.Thick(12).WithSpecies("lime"));

    public string Title => "Can it be carved?";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            new("faults.svg", (path, stop) => Report.Sheet().SaveAsync(path, stop)),
            Work.Picture("faults.png", folder, of: "faults.svg"),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [
            new(
                "faults.png",
                "A board with faults made on purpose: each is marked, with what would clear it",
                ["faults.svg"]
            ),
        ];

    /// <summary>A two-sided chip that stands upright.</summary>
    private static Contour Petal(double x, double y, double height, double bulge) =>
        new(new Vertex(x, y - height / 2, bulge), new Vertex(x, y + height / 2, bulge));

    private static Contour Triangle(double x, double y, double width) =>
        Contour.Polygon(
            new Point(x - width / 2, y),
            new Point(x + width / 2, y),
            new Point(x, y + 0.8 * width)
        );
}
