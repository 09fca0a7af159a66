using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Bends chips that are drawn as on a rail.</summary>
/// <param name="line">The line that they are bent along.</param>
/// <param name="sides">What becomes of straight slanted sides.</param>
/// <param name="accuracy">How far a fitted side may be off, in mm.</param>
/// <param name="levels">Heights on which corners lie exactly.</param>
internal sealed class ChipBender(
    BendLine line,
    BentSides sides,
    double accuracy,
    IReadOnlyList<double> levels
)
{
    /// <summary>Lengths in mm that differ by less are meant to be the same.</summary>
    private const double Same = 1e-9;

    /// <summary>Chips that lie on one stretch, by the shape and what the stretch looks like.</summary>
    private readonly Dictionary<(ChipShape, (double, double)), BentChip> _done = [];

    /// <summary>Returns a chip as it is bent where its station lies at an x.</summary>
    internal BentChip Bend(ChipShape chip, double station)
    {
        var extents = chip.Outline.Extents;
        var middle = extents.Centre.X;
        if (line.PieceOver(station + extents.Min.X, station + extents.Max.X) is not { } piece)
            return Bent(chip, station, middle, place => Across(place, station, middle));
        var key = (chip, piece.Likeness);
        if (!_done.TryGetValue(key, out var bent))
            _done[key] = bent = Bent(chip, station, middle, place => piece.Local(place.X, place.Y));
        return bent;
    }

    /// <summary>Returns the corners of a run as it is bent where its station lies at an x; without the end of an open one.</summary>
    internal IEnumerable<BentCorner> Corners(SegmentRun run, double station) =>
        run.Segments.SelectMany(side => Side(side, station));

    /// <summary>Where a place of a chip that lies on several stretches comes to lie, in the frame of its station.</summary>
    private Point Across(BendPlace place, double station, double middle) =>
        BentStation
            .Frame(line, station, middle)
            .Inverse()
            .Apply(line.Map(station + place.X, place.Y));

    private BentChip Bent(
        ChipShape chip,
        double station,
        double middle,
        Func<BendPlace, Point> locate
    )
    {
        var rings = new List<Contour>();
        var places = new List<BendPlace>();
        foreach (var ring in chip.Holes.Prepend(chip.Outline))
        {
            // A stab-cut chip has three sides, and a straight one across from its tip.
            BentCorner[] corners = chip.Cut.IsStabbed
                ? [.. ring.Vertices.Select(one => new BentCorner(At(one.Point), one.Bulge))]
                : [.. Corners(ring, station)];
            rings.Add(new(corners.Select(one => new Vertex(locate(one.Place), one.Bulge))));
            places.AddRange(corners.Select(corner => corner.Place));
        }
        var shape = new ChipShape(rings[0], [.. rings.Skip(1)]).WithCut(chip.Cut);
        return new(shape, [.. places], middle);
    }

    /// <summary>The corners where the parts of a bent side begin.</summary>
    private IEnumerable<BentCorner> Side(Segment side, double station)
    {
        var (from, to) = (side.Start, side.End);
        if (side.IsLine && Math.Abs(from.Y - to.Y) <= Same)
            return Level(from, to.X, station);
        if (side.IsLine && (sides == BentSides.Straight || Math.Abs(from.X - to.X) <= Same))
            return [new(At(from), 0)];
        return Curved(side, station);
    }

    private IEnumerable<BentCorner> Level(Point from, double to, double station)
    {
        double[] stops = [from.X, .. Joints(from.X, to, station), to];
        for (var i = 1; i < stops.Length; i++)
        {
            var turn = line.PieceAcross(station + stops[i - 1], station + stops[i]).Turn;
            foreach (var part in BentArc.Parts(stops[i - 1], stops[i], turn))
                yield return new(At(new Point(part.X, from.Y)), part.Bulge);
        }
    }

    private IEnumerable<BentCorner> Curved(Segment side, double station)
    {
        var extents = side.Extents;
        Segment[] parts = [side];
        foreach (var joint in Joints(extents.Min.X, extents.Max.X, station))
            parts = [.. parts.SelectMany(part => UprightCut.Pieces(part, joint))];
        foreach (var part in parts)
        {
            var piece = line.PieceAcross(station + part.Start.X, station + part.End.X);
            foreach (var corner in BentCurve.Fit(piece, part, accuracy))
                yield return corner with
                {
                    Place = At(new BendPlace(corner.Place.X, corner.Place.Y)),
                };
        }
    }

    private double[] Joints(double from, double to, double station)
    {
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        double[] joints = [.. line.Joints(station + low, station + high).Select(x => x - station)];
        if (from > to)
            Array.Reverse(joints);
        return joints;
    }

    private BendPlace At(Point point) => At(new BendPlace(point.X, point.Y));

    /// <summary>A place on the band, on a rule if it is meant to be.</summary>
    private BendPlace At(BendPlace place)
    {
        foreach (var level in levels)
            if (Math.Abs(place.Y - level) <= Same)
                return place with { Y = level };
        return place;
    }
}
