namespace PatternGen.Gallery.Topics;

/// <summary>The pictures of the README. They are committed; a test makes them anew and compares.</summary>
internal sealed class ReadmeTopic(string folder) : ITopic
{
    private const double StripLength = 140;

    private static readonly string[] Bands =
    [
        "Raised diamonds",
        "Ridge zigzag",
        "Hollow diamonds",
        "Petal row",
    ];

    private static readonly string[] Rosettes =
    [
        "Six petals in a wreath",
        "Second six drawn through",
        "Whirl",
        "Petals within diamonds",
    ];

    /// <summary>A thousandth of a millimetre is finer than any screen shows, and keeps the files small.</summary>
    private static readonly SaveOptions Small = SaveOptions.Default.WithDecimals(3);

    public string Title => "The README's pictures";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            new("bands.svg", (path, stop) => BandSheet.SaveAsync(path, Small, stop)),
            new("rosettes.svg", (path, stop) => RosetteSheet.SaveAsync(path, Small, stop)),
            new("carved.svg", CarvedSamples.Panel.Preview(CarvingTopic.Knife).SaveAsync),
            new(
                "layouts.svg",
                (path, stop) => LayoutPieces.ThreePieces.SaveAsync(path, Small, stop)
            ),
        ];

    public IReadOnlyList<Exhibit> Exhibits => [];

    private static Pattern BandSheet =>
        BandStrips.Sheet(
            Bands.Select(name => BandSampler.All.Single(sample => sample.Name == name)),
            StripLength
        );

    private static Pattern RosetteSheet =>
        ContactSheet.Of(
            "Rosettes drawn with the compass",
            Rosettes
                .Select(name => RosetteSampler.All.Single(sample => sample.Name == name))
                .Select(sample => ((Pattern)sample.Carved, sample.Name)),
            columns: 4
        );
}
