using System.Text;

namespace PatternGen.Tests.Importing.Recipes;

/// <summary>Rebuilds patterns from their recipes and compares all that is written of them, to the byte.</summary>
internal static class Rebuilding
{
    /// <summary>Writes a pattern as a recipe, reads that, and returns the rebuilt pattern; it says the same, and so does its recipe.</summary>
    internal static Pattern ShouldBeRebuilt(this Pattern pattern)
    {
        var json = pattern.ToRecipe().ToString();
        json.ShouldMatchSchema();

        var rebuilt = Recipe.Parse(json).Pattern;

        rebuilt.ToRecipe().ToString().ShouldBe(json);
        rebuilt.Caption().ShouldBe(pattern.Caption());
        rebuilt.Name.ShouldBe(pattern.Name);
        rebuilt.ChipCount.ShouldBe(pattern.ChipCount);
        if (pattern.Extents is null)
            return rebuilt;
        foreach (var (format, purpose, options) in Files)
            Bytes(rebuilt, format, purpose, options)
                .ShouldBe(Bytes(pattern, format, purpose, options), $"{purpose} as {format}");
        ChipsOf(rebuilt).ShouldBe(ChipsOf(pattern));
        return rebuilt;
    }

    private static IEnumerable<(FileFormat, For, SaveOptions)> Files =>
        [
            (FileFormat.Svg, For.Viewing, SaveOptions.Default),
            (FileFormat.Svg, For.Paper, SaveOptions.Default.WithRepeats(Repeats.ByReference)),
            (FileFormat.Dxf, For.Machine, SaveOptions.Default),
            (FileFormat.Dxf, For.Machine, SaveOptions.Default.WithRepeats(Repeats.ByReference)),
        ];

    private static string Bytes(
        Pattern pattern,
        FileFormat format,
        For purpose,
        SaveOptions options
    )
    {
        using var stream = new MemoryStream();
        pattern.Save(stream, format, purpose, options);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>What no drawing shows: ids, cuts and grain, with all digits.</summary>
    private static IEnumerable<string> ChipsOf(Pattern pattern)
    {
        var stock = Stock.Thick(20).GrainAlong(degrees: 17);
        return pattern
            .Chips.Take(500)
            .Select(chip =>
                $"{chip.Id} {chip.Cut} {chip.GrainOn(stock).Radians:R} {string.Join(' ', chip.Outline.Vertices.Select(corner => $"{corner.Point.X:R},{corner.Point.Y:R},{corner.Bulge:R}"))}"
            );
    }
}
