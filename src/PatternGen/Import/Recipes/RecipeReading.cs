namespace PatternGen;

/// <summary>A recipe while it is read: what it may ask for, what it has made, and what it names to use again.</summary>
internal sealed class RecipeReading(ImportLimits limits)
{
    /// <summary>
    /// Most placements above one another. Each takes some of the stack wherever the pattern is drawn; a thread of the
    /// smallest usual stack, 1 MB, holds several times as many.
    /// </summary>
    internal const int HighestTree = 1000;

    private readonly Dictionary<string, Pattern> _shared = new(StringComparer.Ordinal);
    private readonly Dictionary<string, CompassDrawing> _drawings = new(StringComparer.Ordinal);
    private readonly Dictionary<Pattern, int> _heights = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Pattern, long> _sizes = new(ReferenceEqualityComparer.Instance);
    private int _elements;
    private int _segments;
    private int _nesting;
    private int _height;

    /// <exception cref="ImportException">There are more objects than the limits allow.</exception>
    internal void CountElement(RecipeValue value)
    {
        if (++_elements > limits.Elements)
            throw value.Fail(
                $"The recipe describes more than {limits.Elements} things.",
                "a recipe that describes fewer",
                "a higher limit (ImportLimits.WithElements)"
            );
    }

    /// <exception cref="ImportException">There are more lines and arcs than the limits allow.</exception>
    internal void CountSegments(RecipeValue value, int count)
    {
        if (count > limits.Segments - _segments)
            throw value.Fail(
                $"The recipe describes more than {limits.Segments} lines and arcs.",
                "fewer corners",
                "a higher limit (ImportLimits.WithSegments)"
            );
        _segments += count;
    }

    /// <summary>Reads a pattern within a pattern.</summary>
    /// <param name="value">The pattern.</param>
    /// <param name="isOutermost">Whether it is in none.</param>
    /// <param name="read">Reads it.</param>
    /// <exception cref="ImportException">It lies deeper than the limits allow.</exception>
    internal Pattern Within(RecipeValue value, bool isOutermost, Func<Pattern> read)
    {
        if (_nesting++ > limits.Depth)
            throw value.Fail(
                $"Patterns are nested deeper than {limits.Depth}.",
                "patterns under \"shared\", used by name",
                "a higher limit (ImportLimits.WithDepth)"
            );
        // The tree is as high as the highest part, and what is done to it comes on top.
        var besides = _height;
        _height = 0;
        var pattern = read();
        // One that is used by name is as high as it was.
        _heights.TryAdd(pattern, _height);
        _height = Math.Max(besides, _heights[pattern]);
        _nesting--;
        return pattern;
    }

    /// <summary>Makes a pattern and draws it, so that what is impossible is told where it was asked for.</summary>
    /// <param name="value">Where it was asked for.</param>
    /// <param name="make">Makes it.</param>
    /// <exception cref="ImportException">It is impossible, or asks too much.</exception>
    internal Pattern Accept(RecipeValue value, Func<Pattern> make)
    {
        var pattern = make();
        if (++_height > HighestTree)
            throw value.Fail(
                $"More than {HighestTree} changes are made to one pattern, one after the other.",
                "parts side by side in one \"combined\" pattern"
            );
        Blame.On(
            value,
            _ => false,
            () =>
            {
                RefuseTooMany([pattern]);
                return pattern;
            }
        );
        return pattern;
    }

    /// <summary>Returns a pattern that was named to be used again.</summary>
    internal Pattern Used(string name)
    {
        if (!_shared.TryGetValue(name, out var pattern))
            throw new PatternException(
                $"No pattern is shared under the name \"{RecipeValue.Shown(name)}\" before this.",
                remedies:
                [
                    _shared.Count > 0
                        ? NearestName.Remedy(name, _shared.Keys, "one of these")
                        : "a pattern of that name in the list \"shared\"",
                ]
            );
        _height = Math.Max(_height, _heights[pattern]);
        return pattern;
    }

    /// <summary>Refuses parts that are too many together, before they are put together.</summary>
    /// <exception cref="PatternException">They are.</exception>
    internal void RefuseTooMany(IEnumerable<Pattern> parts)
    {
        long pieces = 0;
        foreach (var part in parts)
        {
            pieces += SizeOf(part);
            if (pieces > limits.Elements)
                throw new PatternException(
                    $"The pattern has more than {limits.Elements} pieces, repeats counted each time.",
                    remedies: ["fewer repeats", "a higher limit (ImportLimits.WithElements)"]
                );
        }
    }

    /// <summary>Number of pieces and of rows, since a row without pieces keeps its number; asked for once, however often it is used.</summary>
    private long SizeOf(Pattern pattern)
    {
        if (!_sizes.TryGetValue(pattern, out var size))
            _sizes[pattern] = size = pattern.Root.PieceCount + pattern.Root.RowSizes.Count;
        return size;
    }

    /// <summary>Names a pattern for later ones to use.</summary>
    /// <returns>Whether the name was free.</returns>
    internal bool Share(string name, Pattern pattern) => _shared.TryAdd(name, pattern);

    /// <summary>Returns the drawing of a description; the same words give the same drawing, whose parts are found once.</summary>
    internal CompassDrawing Drawing(string words, Func<CompassDrawing> read)
    {
        if (!_drawings.TryGetValue(words, out var drawing))
            _drawings[words] = drawing = read();
        return drawing;
    }
}
