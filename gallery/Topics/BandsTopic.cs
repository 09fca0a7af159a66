namespace PatternGen.Gallery.Topics;

/// <summary>The sample bands: each on a strip of its own, and all together on one sheet.</summary>
internal sealed class BandsTopic(string folder) : ITopic
{
    private const double StripLength = 160;

    public string Title => "Bands on ruled lines";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            new("bands.svg", (path, stop) => Sheet.SaveAsync(path, cancellation: stop)),
            new("bands.dxf", (path, stop) => Sheet.SaveAsync(path, cancellation: stop)),
            Work.Picture("bands.png", folder, of: "bands.svg"),
            .. BandSampler.All.SelectMany(Files),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [
            new("bands.png", "All sample bands on one sheet", ["bands.svg", "bands.dxf"]),
            .. BandSampler.All.Select(sample => new Exhibit(
                $"{FileName(sample)}.png",
                $"{BandStrips.Words(sample)}. {Strip(sample).Fit}",
                [$"{FileName(sample)}.svg", $"{FileName(sample)}.dxf"]
            )),
        ];

    private static Pattern Sheet => BandStrips.Sheet(BandSampler.All, StripLength);

    private IEnumerable<Work> Files(NamedBand sample)
    {
        var (name, strip) = (FileName(sample), Strip(sample));
        yield return new($"{name}.svg", (path, stop) => strip.SaveAsync(path, cancellation: stop));
        yield return new($"{name}.dxf", (path, stop) => strip.SaveAsync(path, cancellation: stop));
        yield return Work.Picture($"{name}.png", folder, of: $"{name}.svg");
    }

    private static RailBorder Strip(NamedBand sample) => BandStrips.Strip(sample, StripLength);

    private static string FileName(NamedBand sample) =>
        sample.Name.ToLowerInvariant().Replace(' ', '-');
}
