namespace PatternGen;

/// <summary>A pattern as the pieces that lie on the wood, for one of which nothing else is known.</summary>
internal static class FlatPattern
{
    internal static MotifNode Of(Pattern pattern)
    {
        var content = PatternReader.Read(pattern.Root);
        return new()
        {
            ChipRows =
            [
                .. pattern
                    .Chips.GroupBy(chip => chip.Id.Row)
                    .OrderBy(row => row.Key)
                    .Select(row => row.Select(ShapeOf).ToArray()),
            ],
            LineCuts = [.. content.LineCuts],
            LayoutLines = [.. content.LayoutLines],
            Stock = [.. content.Stock],
            GridLines = [.. content.GridLines],
            Labels = [.. content.Labels],
        };
    }

    private static ChipShape ShapeOf(Chip chip) =>
        new ChipShape(chip.Outline, [.. chip.Holes]).WithCut(chip.Cut);
}
