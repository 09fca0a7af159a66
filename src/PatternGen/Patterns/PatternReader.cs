using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Turns the flattened stream of a tree back into objects, for those who read a pattern.</summary>
internal static class PatternReader
{
    /// <summary>Reads a leaf at a time, so that a caller who stops early pays for no more.</summary>
    internal static IEnumerable<Chip> Chips(PatternNode root)
    {
        var found = new ChipList();
        foreach (var (motif, sink) in root.Leaves(found))
        {
            found.Clear();
            motif.Draw(sink, LayerSet.Chips);
            foreach (var chip in found)
                yield return chip;
        }
    }

    internal static Content Read(PatternNode root)
    {
        var content = new Content();
        root.Draw(content, LayerSet.All & ~LayerSet.Chips);
        return content;
    }

    /// <summary>All but the chips.</summary>
    internal sealed class Content : IPatternSink
    {
        internal List<Chain> LayoutLines { get; } = [];
        internal List<LineCut> LineCuts { get; } = [];
        internal List<Contour> Stock { get; } = [];
        internal List<Label> Labels { get; } = [];
        internal List<Chain> GridLines { get; } = [];

        void IPatternSink.Chip(in PlacedChip chip) { }

        void IPatternSink.LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile) =>
            LineCuts.Add(LineCut.Placed(new Chain(path.ToArray()), width, profile));

        void IPatternSink.LayoutLine(ReadOnlySpan<Vertex> path) =>
            LayoutLines.Add(new(path.ToArray()));

        void IPatternSink.Stock(ReadOnlySpan<Vertex> outline) => Stock.Add(new(outline.ToArray()));

        void IPatternSink.Label(Label label) => Labels.Add(label);

        void IPatternSink.GridLine(ReadOnlySpan<Vertex> path) => GridLines.Add(new(path.ToArray()));
    }

    private sealed class ChipList : List<Chip>, IPatternSink
    {
        void IPatternSink.Chip(in PlacedChip chip) => Add(new(chip));

        void IPatternSink.LineCut(
            ReadOnlySpan<Vertex> path,
            double width,
            GrooveProfile profile
        ) { }

        void IPatternSink.LayoutLine(ReadOnlySpan<Vertex> path) { }

        void IPatternSink.Stock(ReadOnlySpan<Vertex> outline) { }

        void IPatternSink.Label(Label label) { }

        void IPatternSink.GridLine(ReadOnlySpan<Vertex> path) { }
    }
}
