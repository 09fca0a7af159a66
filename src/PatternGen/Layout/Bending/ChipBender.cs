using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Bends chips that are drawn as on a rail.</summary>
/// <param name="line">The line that they are bent along.</param>
/// <param name="sides">Bends their sides.</param>
internal sealed class ChipBender(BendLine line, SideBender sides)
{
    /// <summary>Chips that lie on one stretch, by the shape and what the stretch looks like.</summary>
    private readonly Dictionary<(ChipShape, (double, double)), BentChip> _done = [];

    /// <summary>Returns a chip as it is bent at a station.</summary>
    internal BentChip Bend(ChipShape chip, BendStation station)
    {
        var extents = chip.Outline.Extents;
        var middle = extents.Centre.X;
        if (line.PieceOver(station.X + extents.Min.X, station.X + extents.Max.X) is not { } piece)
        {
            var back = station.Frame(middle).Inverse();
            return Bent(chip, station, place => back.Apply(station.PointOf(place)));
        }
        var key = (chip, piece.Likeness);
        if (!_done.TryGetValue(key, out var bent))
            _done[key] = bent = Bent(
                chip,
                station,
                place => piece.Local(place.X + place.Beyond, place.Y)
            );
        return bent;
    }

    private BentChip Bent(ChipShape chip, BendStation station, Func<BendPlace, Point> locate)
    {
        var rings = new List<Contour>();
        var places = new List<BendPlace>();
        foreach (var ring in chip.Holes.Prepend(chip.Outline))
        {
            // A stab-cut chip has three sides, and a straight one across from its tip.
            BentCorner[] corners = chip.Cut.IsStabbed
                ? [.. ring.Vertices.Select(one => new BentCorner(sides.At(one.Point), one.Bulge))]
                : [.. sides.Corners(ring, station)];
            rings.Add(new(corners.Select(one => new Vertex(locate(one.Place), one.Bulge))));
            places.AddRange(corners.Select(corner => corner.Place));
        }
        var shape = new ChipShape(rings[0], [.. rings.Skip(1)]).WithCut(chip.Cut);
        return new(shape, [.. places], chip.Outline.Extents.Centre.X);
    }
}
