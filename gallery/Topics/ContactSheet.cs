using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>Patterns side by side in rows, a line of words under each.</summary>
internal static class ContactSheet
{
    private const double Gap = 8;
    private const double LabelHeight = 2.6;
    private const double LabelGap = 2.5;

    /// <param name="name">What the sheet is called.</param>
    /// <param name="items">The patterns with their words.</param>
    /// <param name="columns">How many stand side by side.</param>
    internal static Pattern Of(
        string name,
        IEnumerable<(Pattern Pattern, string Words)> items,
        int columns
    )
    {
        var parts = new List<Pattern>();
        double top = 0;
        foreach (var row in items.Chunk(columns))
        {
            double left = 0;
            var height = row.Max(item => item.Pattern.Extents!.Value.Height);
            var width = row.Max(item => item.Pattern.Extents!.Value.Width);
            foreach (var (pattern, words) in row)
            {
                var extents = pattern.Extents!.Value;
                var centre = new Point(left + width / 2, top - height / 2);
                parts.Add(pattern.Moved(centre.X - extents.Centre.X, centre.Y - extents.Centre.Y));
                parts.Add(Words(words, new(left, top - height - LabelGap - LabelHeight)));
                left += width + Gap;
            }
            top -= height + LabelGap + LabelHeight + Gap;
        }
        return Pattern.Combine(parts).Named(name);
    }

    private static Pattern Words(string words, Point at) =>
        Pattern.OfLabels(new Label(words, at, LabelHeight));
}
