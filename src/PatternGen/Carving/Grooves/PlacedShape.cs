using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip by its shape and its place, without a copy of its outline.</summary>
/// <param name="Id">Row and place, from 1.</param>
/// <param name="Shape">The shape that all its repeats share.</param>
/// <param name="Placement">How it is placed on the wood.</param>
internal readonly record struct PlacedShape(ChipId Id, ChipShape Shape, Transform Placement)
{
    internal Point Deepest => Placement.Apply(Shape.Roof.Deepest);

    /// <summary>Reads the chips of a pattern a leaf at a time.</summary>
    internal static IEnumerable<PlacedShape> Of(Pattern pattern)
    {
        var found = new Sink();
        foreach (var (motif, sink) in pattern.Root.Leaves(found))
        {
            found.Shapes.Clear();
            motif.Draw(sink, LayerSet.Chips);
            foreach (var shape in found.Shapes)
                yield return shape;
        }
    }

    private sealed class Sink : SelectiveSink
    {
        internal List<PlacedShape> Shapes { get; } = [];

        // Inside the tree rows and places are counted from 0.
        public override void Chip(in PlacedChip chip) =>
            Shapes.Add(new(new(chip.Id.Row + 1, chip.Id.Index + 1), chip.Shape, chip.Placement));
    }
}
