namespace PatternGen.Geometry;

/// <summary>A place well inside an area: the middle of nearly the largest circle that fits in it.</summary>
/// <remarks>
/// Squares that may hold a better place than the best one so far are quartered, the most promising first, until none
/// promises more than <see cref="Accuracy"/> beyond it.
/// </remarks>
internal readonly struct InsidePlace
{
    /// <summary>Share by which the largest circle may be larger than the one found. For a number to stand in, more digits would show nothing.</summary>
    internal const double Accuracy = 0.02;

    /// <summary>A thin band round a wide circle has equally good places all along; after this many squares the best will do.</summary>
    private const int MaxSquares = 10_000;

    internal InsidePlace(Point point, double clearance) => (Point, Clearance) = (point, clearance);

    internal Point Point { get; }

    /// <summary>Distance in mm from the outline and the holes.</summary>
    internal double Clearance { get; }

    internal static InsidePlace Of(RegionPart area)
    {
        var best = new InsidePlace(area.Outer.Vertices[0].Point, 0);
        var squares = new PriorityQueue<(Point Middle, double Half), double>();
        var extents = area.Outer.Extents;
        // Squares as wide as the area is narrow; of a sliver, not more of them than there is use for.
        const int MostInARow = 64;
        var (narrow, wide) = (
            Math.Min(extents.Width, extents.Height),
            Math.Max(extents.Width, extents.Height)
        );
        var start = Math.Max(narrow, wide / MostInARow) / 2;
        // Begun at the middle of the extents, so that a symmetric shape is tried at its centre first.
        var (columns, rows) = (Squares(extents.Width), Squares(extents.Height));
        for (var column = 0; column < columns; column++)
        for (var row = 0; row < rows; row++)
            Try(
                extents.Centre
                    + new Vector((2 * column + 1 - columns) * start, (2 * row + 1 - rows) * start),
                start
            );
        for (var tried = 0; tried < MaxSquares && squares.Count > 0; tried += 4)
        {
            squares.TryDequeue(out var square, out var promise);
            if (-promise <= best.Clearance * (1 + Accuracy))
                break;
            var half = square.Half / 2;
            Try(square.Middle + new Vector(half, half), half);
            Try(square.Middle + new Vector(-half, half), half);
            Try(square.Middle + new Vector(-half, -half), half);
            Try(square.Middle + new Vector(half, -half), half);
        }
        return best;

        // Not one more for what rounding adds to a whole number.
        double Squares(double length) => Math.Max(1, Math.Ceiling(length / 2 / start - 1e-9));

        void Try(Point middle, double half)
        {
            var clearance = ClearanceAt(area, middle);
            if (clearance > best.Clearance)
                best = new(middle, clearance);
            var promise = clearance + half * Math.Sqrt(2);
            if (promise > best.Clearance * (1 + Accuracy))
                squares.Enqueue((middle, half), -promise);
        }
    }

    /// <summary>Distance from the edge, negative outside.</summary>
    private static double ClearanceAt(RegionPart area, Point point)
    {
        var distance = area.Outer.DistanceTo(point);
        var isInside = Winding.Of(area.Outer, point) != 0;
        foreach (var hole in area.Holes)
        {
            distance = Math.Min(distance, hole.DistanceTo(point));
            isInside &= Winding.Of(hole, point) == 0;
        }
        return isInside ? distance : -distance;
    }
}
