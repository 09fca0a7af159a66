namespace PatternGen.Gallery.Topics;

/// <summary>Sample bands on strips of wood, one under the other, a label over each.</summary>
internal static class BandStrips
{
    private const double Margin = 5;
    private const double LabelHeight = 3;

    /// <summary>From the top of a strip to the base line of its label, and from a strip to the next one.</summary>
    private const double LabelGap = 2;
    private const double StripGap = 9;

    internal static RailBorder Strip(NamedBand sample, double length) =>
        Rail.Of(length, sample.Band.Height + 2 * Margin)
            .Named(sample.Name)
            .Border(sample.Band)
            .EndMargins(Margin);

    internal static Pattern Sheet(IEnumerable<NamedBand> samples, double length)
    {
        var parts = new List<Pattern>();
        double top = 0;
        foreach (var sample in samples)
        {
            var strip = Strip(sample, length);
            var bottom = top - strip.Rail.Width;
            parts.Add(strip.Moved(0, bottom));
            parts.Add(
                Pattern.OfLabels(new Label(Words(sample), new(0, top + LabelGap), LabelHeight))
            );
            top = bottom - StripGap;
        }
        return Pattern.Combine(parts).Named("Bands on ruled lines");
    }

    internal static string Words(NamedBand sample)
    {
        var group = sample.Band.FriezeGroup.ToString().ToLowerInvariant();
        var rules = sample.Band.Rules.Zip(
            sample.Band.Rules.Skip(1),
            (low, high) => $"{high - low:0.##}"
        );
        return $"{sample.Name}: rules {string.Join(", ", rules)} mm, {group}";
    }
}
