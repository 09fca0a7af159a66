using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// What a DXF holds besides the chips, gathered before anything is written: chips are many, all else is little.
/// </summary>
internal sealed class DxfContent
{
    private readonly Dictionary<Layer, IReadOnlyList<Chain>> _lines = [];

    internal DxfContent(Pattern pattern, SaveOptions options)
    {
        var decimals = options.Decimals;
        var read = PatternReader.Read(pattern.Root);
        if (MachineNote.Place(pattern, options.Wording) is { } note)
            _lines[Layer.Note] = LineSides.Once(note.Strokes(), decimals);
        _lines[Layer.Labels] = LineSides.Once(
            read.Labels.SelectMany(label => label.Strokes()),
            decimals
        );
        _lines[Layer.LayoutLines] = LineSides.Once(read.LayoutLines, decimals);
        _lines[Layer.LineCuts] = LineSides.Once(read.LineCuts.Select(cut => cut.Path), decimals);
        if (options.SharedSides == SharedSides.Once)
            _lines[Layer.Chips] = ChipSides.Chains(pattern, decimals);
        Stock = LineSides.Once(read.Stock, decimals);
        ClosedChipCount = options.SharedSides == SharedSides.Closed ? pattern.ChipCount : 0;
        Extents =
            LinesOn(Layer.Note)
                .Concat(LinesOn(Layer.Labels))
                .Select(stroke => (Extents?)stroke.Extents)
                .Aggregate(pattern.Extents, PatternNode.Union)
            ?? default;
    }

    /// <summary>Outlines of the wood, each once.</summary>
    internal IReadOnlyList<Contour> Stock { get; }

    /// <summary>Number of chips that are drawn as closed contours.</summary>
    internal long ClosedChipCount { get; }

    /// <summary>Extents of all that is drawn.</summary>
    internal Extents Extents { get; }

    internal long EntityCount =>
        ClosedChipCount + Stock.Count + _lines.Values.Sum(chains => (long)chains.Count);

    /// <summary>The open and closed lines of a layer, each once.</summary>
    internal IReadOnlyList<Chain> LinesOn(Layer layer) => _lines.GetValueOrDefault(layer, []);
}
