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
            AddLines(Layer.Note, note.Strokes(), decimals);
        AddLines(Layer.Labels, read.Labels.SelectMany(label => label.Strokes()), decimals);
        AddLines(Layer.LayoutLines, read.LayoutLines, decimals);
        AddLines(Layer.LineCuts, read.LineCuts.Select(cut => cut.Path), decimals);
        if (options.SharedSides == SharedSides.Once)
            _lines[Layer.Chips] = ChipSides.Chains(pattern, decimals);
        Stock = [.. read.Stock.DistinctBy(outline => new OutlineKey(outline, decimals))];
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

    /// <summary>Adds lines, each part of them once, since a machine would otherwise go over it twice.</summary>
    private void AddLines(Layer layer, IEnumerable<Chain> lines, int decimals)
    {
        var sides = new SideSet(decimals);
        foreach (var line in lines)
            sides.Add(line.Span, closed: false);
        _lines[layer] = SideRuns.Of(sides.Pieces());
    }
}
