namespace PatternGen;

/// <summary>What refuses an SVG in more than one place.</summary>
internal static class SvgRefusal
{
    internal static ImportException TooDeep(int depth, string? where) =>
        new(
            $"Elements lie in each other, or refer to each other, more than {depth} levels deep.",
            where,
            ["groups within fewer groups", "a higher limit (ImportLimits.WithDepth)"]
        );

    internal static ImportException TooManyElements(int most, string? where) =>
        new(
            $"The file has more than {most} elements.",
            where,
            ["a drawing with fewer elements", "a higher limit (ImportLimits.WithElements)"]
        );

    internal static ImportException Circular(string name, string? where) =>
        new(
            $"The element #{name} refers to itself.",
            where,
            ["a use that refers to something it is not part of"]
        );
}
