using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One chip of what stands in cells, in the lattice's frame.</summary>
/// <param name="Row">Its row there.</param>
/// <param name="Shape">Its shape.</param>
/// <param name="Placement">How the shape is placed in the frame.</param>
/// <param name="Rings">Its outline and holes in the frame.</param>
/// <param name="Inner">A place inside it.</param>
internal sealed record StampChip(
    int Row,
    ChipShape Shape,
    Transform Placement,
    Contour[] Rings,
    Point Inner
)
{
    internal double Area => Rings.Sum(ring => ring.SignedArea);

    /// <summary>Returns the chips that a node draws.</summary>
    internal static StampChip[] Of(PatternNode node)
    {
        var chips = new Collector();
        node.Draw(chips, LayerSet.Chips);
        return [.. chips.Found];
    }

    private sealed class Collector : SelectiveSink
    {
        internal List<StampChip> Found { get; } = [];

        public override void Chip(in PlacedChip chip)
        {
            var outline = chip.ToOutline();
            var holes = chip.ToHoles();
            Found.Add(
                new(
                    chip.Id.Row,
                    chip.Shape,
                    chip.Placement,
                    [outline, .. holes],
                    InsidePlace.Of(new(outline, holes)).Point
                )
            );
        }
    }
}
