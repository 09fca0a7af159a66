using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws cells smaller that cross the edge of a field, so that they lie inside.</summary>
/// <remarks>
/// A cell shrinks towards one of its corners, the middle of one of its sides, or its centre: towards that which leaves it
/// largest, the centre if nothing is gained otherwise. Only places from which all of the cell's outline is seen will do,
/// for then the smaller cell lies within the cell, and within any cell a little larger: so it keeps off its neighbours, and
/// the largest that fits is found by halving.
/// </remarks>
internal sealed class RimShrinking(FieldEdge edge, double smallest)
{
    /// <summary>How near the size found comes to the largest that fits, as a share of the cell: no carver sees it.</summary>
    private const double Accuracy = 1e-7;

    /// <summary>What another place must gain, as a share of the cell, to be chosen over one named before.</summary>
    private const double Gain = 0.01;

    /// <summary>Returns how the cell shrinks, or null if it would get too small.</summary>
    /// <param name="room">The cell on the wood.</param>
    /// <param name="inner">A place inside it.</param>
    /// <param name="middle">Its centre.</param>
    /// <param name="sides">Numbers of the sides of the edge near it.</param>
    internal (Point Towards, double Factor)? Shrink(
        Contour room,
        Point inner,
        Point middle,
        List<int> sides
    )
    {
        (Point Towards, double Factor)? best = null;
        foreach (var place in Places(room, middle))
        {
            var least = best is { } known ? known.Factor + Gain : smallest;
            if (least < 1 && SeesAll(room, place) && Fits(place, least))
                best = (place, Largest(place, least));
        }
        return best;

        bool Fits(Point towards, double factor)
        {
            var resize = Transform.Resize(factor, towards);
            return edge.PlaceOf([room.Transformed(resize)], resize.Apply(inner), sides)
                == EdgePlace.Inside;
        }

        double Largest(Point towards, double fits)
        {
            var over = 1.0;
            while (over - fits > Accuracy)
            {
                var half = (fits + over) / 2;
                if (Fits(towards, half))
                    fits = half;
                else
                    over = half;
            }
            return fits;
        }
    }

    private static IEnumerable<Point> Places(Contour room, Point middle)
    {
        yield return middle;
        foreach (var side in room.Segments)
            yield return side.Middle;
        foreach (var corner in room.Vertices)
            yield return corner.Point;
    }

    /// <summary>Whether straight lines from a place reach all of an outline from inside.</summary>
    private bool SeesAll(Contour room, Point place)
    {
        foreach (var side in room.Segments)
            if (!SeesAll(side, place))
                return false;
        return true;
    }

    /// <summary>
    /// Inside is on the left. A line is seen from its left; an arc from the left of its tangents, of which the end ones
    /// and one opposite the place are the outermost.
    /// </summary>
    private bool SeesAll(Segment side, Point place)
    {
        if (!IsLeft(0) || !IsLeft(side.Length))
            return false;
        if (side.IsLine)
            return true;
        var toCentre = side.Centre - place;
        if (toCentre.Length <= edge.Tolerance.Merge)
            return side.Bulge > 0;
        // From outside its circle a full arc turns its back where it is nearest, a hollow one where it is farthest.
        var worst = side.Centre - toCentre.Unit() * (Math.Sign(side.Bulge) * side.Radius);
        return side.DistanceTo(worst) > edge.Tolerance.Merge || IsLeft(side.LengthAt(worst));

        bool IsLeft(double along) =>
            side.NormalAt(along).Dot(place - side.PointAt(along)) >= -edge.Tolerance.Merge;
    }
}
