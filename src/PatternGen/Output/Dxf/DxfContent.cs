using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// What a DXF holds besides the chips, gathered before anything is written: chips are many, all else is little.
/// </summary>
internal sealed class DxfContent
{
    private readonly IReadOnlyList<Chain>?[] _lines = new IReadOnlyList<Chain>?[
        Enum.GetValues<Layer>().Length
    ];

    private readonly long _chipEntityCount;

    /// <param name="pattern">The pattern.</param>
    /// <param name="options">How it is written.</param>
    /// <param name="repeated">The chips that are written as references.</param>
    internal DxfContent(Pattern pattern, SaveOptions options, RepeatedShapes repeated)
    {
        var decimals = options.Decimals;
        var read = PatternReader.Read(pattern.Root);
        if (MachineNote.Place(pattern, options.Wording) is { } note)
            _lines[(int)Layer.Note] = LineSides.Once([.. note.Strokes()], decimals);
        _lines[(int)Layer.Labels] = LineSides.Once(
            [.. read.Labels.SelectMany(label => label.Strokes())],
            decimals
        );
        _lines[(int)Layer.Grid] = LineSides.Once(read.GridLines, decimals);
        _lines[(int)Layer.LayoutLines] = LineSides.Once(read.LayoutLines, decimals);
        _lines[(int)Layer.LineCuts] = LineSides.Once(
            [.. read.LineCuts.Select(cut => cut.Path)],
            decimals
        );
        if (options.SharedSides == SharedSides.Once)
            _lines[(int)Layer.Chips] = ChipSides.Chains(pattern, decimals);
        Stock = LineSides.Once(read.Stock, decimals);
        DrawsClosedChips =
            options.SharedSides == SharedSides.Closed
            && pattern.Root.Layers.HasFlag(LayerSet.Chips);
        // Each ring is an entity, and a reference is one for all rings of its chip.
        if (DrawsClosedChips)
            _chipEntityCount = pattern.ChipCount + pattern.Root.HoleCount - repeated.HoleCount;
        Extents = WithLines(pattern.Bounds(LayerSet.Chips | LayerSet.Stock));
    }

    /// <summary>Outlines of the wood, each once.</summary>
    internal IReadOnlyList<Contour> Stock { get; }

    /// <summary>Whether chips are drawn as closed contours, not as sides.</summary>
    internal bool DrawsClosedChips { get; }

    /// <summary>Extents of all that is drawn.</summary>
    internal Extents Extents { get; }

    internal long EntityCount =>
        _chipEntityCount + Stock.Count + _lines.Sum(chains => (long)(chains?.Count ?? 0));

    /// <summary>The open and closed lines of a layer, each once.</summary>
    internal IReadOnlyList<Chain> LinesOn(Layer layer) => _lines[(int)layer] ?? [];

    /// <summary>Only the lines that are drawn count, not those that are left out.</summary>
    private Extents WithLines(Extents? drawn)
    {
        foreach (var line in _lines.SelectMany(lines => lines ?? []))
            drawn = PatternNode.Union(drawn, line.Extents);
        return drawn ?? default;
    }
}
