using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Clips the chips that cross the edge of a field, all at once.</summary>
/// <remarks>
/// The edge and the outlines of all those chips are one arrangement, so that chips that share a side share the node where
/// the edge crosses it. Each face that lies inside the edge and in a chip is what is left of it, or a part of that.
/// </remarks>
internal sealed class RimClipping(FieldEdge edge)
{
    private readonly List<Crossing> _crossings = [];

    /// <summary>Notes a chip that crosses the edge.</summary>
    /// <param name="cell">The number of its cell, to be told again.</param>
    /// <param name="chip">The chip.</param>
    /// <param name="rings">Where its outline and holes lie on the wood.</param>
    internal void Add(int cell, StampChip chip, Contour[] rings) =>
        _crossings.Add(new(cell, chip, rings, rings[0].Extents));

    /// <summary>Returns what is left of the chips, in the order that they were noted.</summary>
    internal List<ClippedChip> Clip()
    {
        if (_crossings.Count == 0)
            return [];
        var arrangement = Arrangement.Of(Curves());
        var grid = new ExtentsGrid([.. _crossings.Select(crossing => crossing.Extents)]);
        var merge = arrangement.Tolerance.Merge;
        var found = new List<(int Crossing, ClippedChip Chip)>();
        for (var face = 1; face < arrangement.Faces.Count; face++)
        {
            var part = FaceOutline.Of(arrangement, face);
            // Thinner than the merge distance: nothing but rounding.
            if (part.Area <= merge * part.Outer.Length)
                continue;
            if (PlaceIn(part, merge) is not { } place || !edge.Surrounds(place))
                continue;
            if (HolderOf(place, grid) is { } holder)
                found.Add((holder, Chip(_crossings[holder], part, merge)));
        }
        // Stable, so that the parts of one chip keep the order of the faces.
        return [.. found.OrderBy(one => one.Crossing).Select(one => one.Chip)];
    }

    /// <summary>The sides of the edge and of the chips, those that two chips share only once: told apart, they would take the arrangement several times as long.</summary>
    private IEnumerable<Curve> Curves()
    {
        var known = new HashSet<Segment>();
        foreach (var side in edge.Sides.Concat(_crossings.SelectMany(crossing => crossing.Sides)))
            if (!known.Contains(side.Reversed()) && known.Add(side))
                yield return side;
    }

    /// <summary>A place in a face: half-way across it from the middle of its longest side. None if that is no way.</summary>
    private static Point? PlaceIn(RegionPart part, double merge)
    {
        var longest = part.Outer.Segments.MaxBy(side => side.Chord.LengthSquared);
        var (middle, inwards) = (longest.Middle, longest.NormalAt(longest.Length / 2));
        var extents = part.Outer.Extents;
        var across = new Segment(middle, middle + inwards * (extents.Width + extents.Height));
        var nearest = double.PositiveInfinity;
        foreach (var ring in part.Holes.Prepend(part.Outer))
        foreach (var side in ring.Segments)
        {
            var meeting = across.Intersect(side, Tolerance.OfMerge(merge));
            for (var k = 0; k < meeting.PointCount; k++)
            {
                var away = meeting.PointAt(k).DistanceTo(middle);
                if (away > 2 * merge)
                    nearest = Math.Min(nearest, away);
            }
        }
        return double.IsFinite(nearest) ? middle + inwards * (nearest / 2) : null;
    }

    private int? HolderOf(Point place, ExtentsGrid grid)
    {
        int? holder = null;
        grid.Visit(
            Extents.Of(place),
            number =>
            {
                if (_crossings[number].Holds(place) && (holder is not { } other || number < other))
                    holder = number;
            }
        );
        return holder;
    }

    private static ClippedChip Chip(Crossing crossing, RegionPart part, double merge)
    {
        var exact = new RegionPart(
            crossing.WithOwnCorners(part.Outer, merge),
            [.. part.Holes.Select(hole => crossing.WithOwnCorners(hole, merge))]
        );
        return new(crossing.Cell, crossing.Chip, exact);
    }

    private sealed record Crossing(int Cell, StampChip Chip, Contour[] Rings, Extents Extents)
    {
        internal IEnumerable<Segment> Sides => Rings.SelectMany(ring => ring.Segments);

        internal bool Holds(Point place)
        {
            if (!Extents.Contains(place))
                return false;
            var turns = 0;
            foreach (var ring in Rings)
                turns += Winding.Of(ring, place);
            return turns != 0;
        }

        /// <summary>
        /// Corners that the chip had before are those of its neighbours to the last digit; the arrangement may have taken
        /// another point of the same node.
        /// </summary>
        internal Contour WithOwnCorners(Contour ring, double merge) =>
            new(
                ring.Vertices.Select(corner => new Vertex(
                    Own(corner.Point, 2 * merge) ?? corner.Point,
                    corner.Bulge
                ))
            );

        private Point? Own(Point place, double near)
        {
            foreach (var ring in Rings)
            foreach (var corner in ring.Vertices)
                if (corner.Point.DistanceTo(place) <= near)
                    return corner.Point;
            return null;
        }
    }
}
