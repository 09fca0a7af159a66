namespace PatternGen.Gallery.Topics;

/// <summary>The picture at the top of the README. It is committed; a test makes it anew and compares.</summary>
internal sealed class ReadmeTopic(string folder) : ITopic
{
    private const double StripLength = 140;

    private static readonly string[] Chosen =
    [
        "Raised diamonds",
        "Ridge zigzag",
        "Hollow diamonds",
        "Petal row",
    ];

    public string Title => "The README's picture";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [new("bands.svg", (path, stop) => Sheet.SaveAsync(path, cancellation: stop))];

    public IReadOnlyList<Exhibit> Exhibits => [];

    private static Pattern Sheet =>
        BandStrips.Sheet(
            Chosen.Select(name => BandSampler.All.Single(sample => sample.Name == name)),
            StripLength
        );
}
