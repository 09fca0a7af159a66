using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Frame
{
    /// <inheritdoc cref="Polygon(IEnumerable{Point}, double)"/>
    public static Frame Polygon(double band, params Point[] corners) => Polygon(corners, band);

    /// <summary>Returns a frame with any number of straight sides.</summary>
    /// <param name="corners">The corners of the outer edge in order, in either direction; those on a straight line are none. Corners may point in.</param>
    /// <param name="band">Width of the members in mm.</param>
    /// <exception cref="ArgumentException">There are fewer than three corners.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite, or the width is not positive.</exception>
    /// <exception cref="PatternException">The sides cross, or the members leave no opening.</exception>
    public static Frame Polygon(IEnumerable<Point> corners, double band)
    {
        Point[] given =
        [
            .. Guard.NotNull(corners).Select(corner => Guard.Place(corner, nameof(corners))),
        ];
        var kept = Corners(given);
        if (kept.Length < 3)
            throw new ArgumentException(
                $"A frame has at least three corners, but of the {given.Length} given {kept.Length} remain when those on straight lines are left out.",
                nameof(corners)
            );
        var outline = Contour.Polygon(kept);
        if (outline.SelfIntersections().Count > 0)
            throw new PatternException(
                "The sides of the frame cross or touch.",
                outline.SelfIntersections()[0].Point,
                ["the corners in the order in which one walks round the frame"]
            );
        return Of(
            outline.IsCounterClockwise ? kept : [.. kept.AsEnumerable().Reverse()],
            Guard.Positive(band)
        );
    }

    /// <summary>Returns a frame whose sides and angles are all equal, such as that of a hexagonal box. Side 1 lies level below.</summary>
    /// <param name="sides">Number of sides, 3 to 360.</param>
    /// <param name="side">Length of a side in mm. Six sides of 100 mm are 173.205 mm across.</param>
    /// <param name="band">Width of the members in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="PatternException">The members leave no opening.</exception>
    public static Frame Regular(int sides, double side, double band)
    {
        Guard.Within(sides, 3, 360);
        Guard.Positive(side);
        // Radius of the circle through the corners: half the side over the sine of half its angle.
        var half = Angle.OfTurn(0.5 / sides);
        return OfRegular(sides, side / 2 / half.Sin(), band, new(sides, side, null));
    }

    /// <summary>Returns a frame whose sides and angles are all equal, measured between two sides that lie across from each other.</summary>
    /// <param name="sides">Number of sides, even, 4 to 360.</param>
    /// <param name="across">Distance between opposite sides in mm.</param>
    /// <param name="band">Width of the members in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    /// <exception cref="ArgumentException">The number of sides is odd, so that corners lie across from sides.</exception>
    /// <exception cref="PatternException">The members leave no opening.</exception>
    public static Frame AcrossFlats(int sides, double across, double band)
    {
        Guard.Within(sides, 4, 360);
        if (sides % 2 != 0)
            throw new ArgumentException(
                $"Across from a side of {sides} lies a corner; give the length of a side instead (Regular).",
                nameof(sides)
            );
        var radius = Guard.Positive(across) / 2 / Angle.OfTurn(0.5 / sides).Cos();
        return OfRegular(sides, radius, band, new(sides, null, across));
    }

    private static Frame OfRegular(int sides, double radius, double band, RegularMeasures measures)
    {
        var corners = Enumerable
            .Range(0, sides)
            .Select(i => Point.Origin.Polar(radius, Angle.OfTurn((i - 0.5) / sides - 0.25)))
            .ToArray();
        var low = Contour.Polygon(corners).Extents.Min;
        return new(
            [.. corners.Select(corner => corner - (low - Point.Origin))],
            Guard.Positive(band)
        )
        {
            Measures = measures,
        };
    }

    private static Frame Of(Point[] corners, double band) => new(corners, band);

    /// <summary>The points at which the outline turns.</summary>
    private static Point[] Corners(Point[] points)
    {
        var merge = points.Length == 0 ? 0 : Tolerance.For(ExtentsOf(points)).Merge;
        List<Point> apart = [];
        foreach (var point in points)
            if (apart.Count == 0 || apart[^1].DistanceTo(point) > merge)
                apart.Add(point);
        while (apart.Count > 1 && apart[0].DistanceTo(apart[^1]) <= merge)
            apart.RemoveAt(apart.Count - 1);
        return
        [
            .. apart.Where(
                (point, i) =>
                {
                    var before = apart[(i + apart.Count - 1) % apart.Count];
                    var after = apart[(i + 1) % apart.Count];
                    // On a straight line the point lies no farther from its neighbours' line than what merges.
                    return Math.Abs((point - before).Cross(after - before))
                            > merge * before.DistanceTo(after)
                        || (point - before).Dot(after - point) < 0;
                }
            ),
        ];
    }

    private static Extents ExtentsOf(Point[] points) =>
        points.Aggregate(Extents.Of(points[0]), (extents, point) => extents.Including(point));
}
