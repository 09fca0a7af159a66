namespace PatternGen.Gallery.Topics;

/// <summary>The sample bands: each on a strip of its own, and all together on one sheet.</summary>
internal sealed class BandsTopic(string folder) : ITopic
{
    private const double StripLength = 160;
    private const double StripMargin = 5;
    private const double LabelHeight = 3;

    /// <summary>From the top of a strip to the base line of its label, and from there to the next strip.</summary>
    private const double LabelGap = 2;
    private const double StripGap = 9;

    public string Title => "Bands on ruled lines";

    public string Folder => folder;

    public IReadOnlyList<Work> Works =>
        [
            new("bands.svg", (path, stop) => Sheet().SaveAsync(path, cancellation: stop)),
            new("bands.dxf", (path, stop) => Sheet().SaveAsync(path, cancellation: stop)),
            Work.Picture("bands.png", folder, of: "bands.svg"),
            .. BandSampler.All.SelectMany(Files),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [
            new("bands.png", "All sample bands on one sheet", ["bands.svg", "bands.dxf"]),
            .. BandSampler.All.Select(sample => new Exhibit(
                $"{FileName(sample)}.png",
                $"{Words(sample)}. {Strip(sample).Fit}",
                [$"{FileName(sample)}.svg", $"{FileName(sample)}.dxf"]
            )),
        ];

    private IEnumerable<Work> Files(NamedBand sample)
    {
        var (name, strip) = (FileName(sample), Strip(sample));
        yield return new($"{name}.svg", (path, stop) => strip.SaveAsync(path, cancellation: stop));
        yield return new($"{name}.dxf", (path, stop) => strip.SaveAsync(path, cancellation: stop));
        yield return Work.Picture($"{name}.png", folder, of: $"{name}.svg");
    }

    /// <summary>The strips from top to bottom, a label over each.</summary>
    private static Pattern Sheet()
    {
        var parts = new List<Pattern>();
        double top = 0;
        foreach (var sample in BandSampler.All)
        {
            var strip = Strip(sample);
            var bottom = top - strip.Rail.Width;
            parts.Add(strip.Moved(0, bottom));
            parts.Add(
                Pattern.OfLabels(new Label(Words(sample), new(0, top + LabelGap), LabelHeight))
            );
            top = bottom - StripGap;
        }
        return Pattern.Combine(parts).Named("Bands on ruled lines");
    }

    private static RailBorder Strip(NamedBand sample) =>
        Rail.Of(StripLength, sample.Band.Height + 2 * StripMargin)
            .Named(sample.Name)
            .Border(sample.Band)
            .EndMargins(StripMargin);

    private static string Words(NamedBand sample)
    {
        var group = sample.Band.FriezeGroup.ToString().ToLowerInvariant();
        var rules = sample.Band.Rules.Zip(
            sample.Band.Rules.Skip(1),
            (low, high) => $"{high - low:0.##}"
        );
        return $"{sample.Name}: rules {string.Join(", ", rules)} mm, {group}";
    }

    private static string FileName(NamedBand sample) =>
        sample.Name.ToLowerInvariant().Replace(' ', '-');
}
