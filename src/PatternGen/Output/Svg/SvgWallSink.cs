using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the walls of chips from the sides down to the valley, each as light as it faces the light. It is a picture and no measure.</summary>
/// <param name="file">The file.</param>
/// <param name="edge">Width in mm along the sides that is left free.</param>
internal sealed class SvgWallSink(SvgFile file, double edge) : SelectiveSink
{
    private readonly Dictionary<ChipShape, ChipApex?> _apexes = [];
    private readonly Dictionary<ChipShape, IReadOnlyList<Wall>> _walls = [];

    public override void Chip(in PlacedChip chip)
    {
        if (Shared(_apexes, chip.Shape, ChipApex.Of) is { } apex)
            Pyramid(apex.Placed(chip.Placement), chip.Corners);
        else
            foreach (var wall in Shared(_walls, chip.Shape, ChipWalls.Of))
                file.Paths.TryClosed(
                    wall.Ring(chip.Placement, edge),
                    WallTones.Of(wall.Facing(chip.Placement))
                );
    }

    /// <summary>What all repeats of a shape have in common.</summary>
    private static T Shared<T>(
        Dictionary<ChipShape, T> known,
        ChipShape shape,
        Func<ChipShape, T> make
    )
    {
        if (!known.TryGetValue(shape, out var made))
            known[shape] = made = make(shape);
        return made;
    }

    /// <summary>Three flat walls; as most chips of a rail have them, they are written without allocating.</summary>
    private void Pyramid(ChipApex apex, ReadOnlySpan<Vertex> corners)
    {
        if (apex.Depth <= edge)
            return;
        for (var i = 0; i < corners.Length; i++)
        {
            var (start, end) = (
                corners[i].Point,
                corners[i + 1 < corners.Length ? i + 1 : 0].Point
            );
            file.Paths.TryClosed(
                [apex.At, Inset(start, apex), Inset(end, apex)],
                WallTones.Of((end - start).Left)
            );
        }
    }

    /// <summary>Leaves the light edge of the chip as it is.</summary>
    private Point Inset(Point corner, ChipApex apex) => corner.Towards(apex.At, edge / apex.Depth);
}
