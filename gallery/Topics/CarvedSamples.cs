using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>Pieces of wood to show carved.</summary>
internal static class CarvedSamples
{
    /// <summary>Uncarved wood in mm round what is carved.</summary>
    private const double Border = 8;

    private static readonly string[] Rosettes =
    [
        "Six petals in a wreath",
        "Second six drawn through",
        "Scalloped rim",
        "Overlapping circles",
        "Whirl",
        "Petals within diamonds",
    ];

    /// <summary>Six rosettes on one board.</summary>
    internal static Pattern SixRosettes =>
        OnBoard(
            ContactSheet.Of(
                "Six rosettes",
                Rosettes.Select(name => (Rosette(name), name)),
                columns: 3
            )
        );

    /// <summary>Six petals in their wreath on a square of wood.</summary>
    internal static Pattern Petals => OnBoard(Rosette("Six petals in a wreath"));

    /// <summary>Two rosettes over a border: what the README shows.</summary>
    internal static Pattern Panel =>
        Rail.Of(length: 190, width: 118)
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
            .EndMargins(6)
            .With(Rosette("Six petals in a wreath").Moved(51, 70))
            .With(Rosette("Petals within diamonds").Moved(139, 70))
            .Named("Two rosettes over a border");

    private static Pattern Rosette(string name) =>
        RosetteSampler.All.Single(sample => sample.Name == name).Carved;

    private static Pattern OnBoard(Pattern carved)
    {
        var wood = carved.Extents!.Value.Grown(Border);
        var title = carved.Caption()[0];
        return Pattern.OfStock(Contour.Rectangle(wood.Min, wood.Max)).With(carved).Named(title);
    }
}
