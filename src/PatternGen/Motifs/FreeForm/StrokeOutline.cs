using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the outline of a stroke along a way of lines and arcs.</summary>
internal static class StrokeOutline
{
    /// <summary>Returns the outline, counter-clockwise, from the start of the way.</summary>
    internal static Contour Of(Chain path, StrokeWidth width)
    {
        var right = Side(path, width, -1);
        var left = Side(path, width, 1)
            .AsEnumerable()
            .Reverse()
            .Select(segment => segment.Reversed());
        // A stroke that starts at its full width has a round head.
        Segment[] head = width.WidestAt == 0 ? [.. Head(path, width)] : [];
        return Contour.Of([.. head, .. right, .. left]);
    }

    private static Segment[] Side(Chain path, StrokeWidth width, int side)
    {
        double[] breaks =
        [
            .. Enumerable
                .Range(1, path.Count - 1)
                .Select(path.StartOf)
                .Append(width.Widest)
                .Where(place => place > 0 && place < width.Length)
                .Distinct()
                .Order(),
        ];
        return [.. BiarcFitter.Fit(Place, 0, width.Length, FreeFormShape.Accuracy, breaks)];

        CurvePlace Place(double along)
        {
            var (across, growth) = width.At(along);
            // Looked up once for all three, as this is asked for thousands of places.
            var (index, within) = path.Seek(along);
            var way = path.At(index);
            var tangent = way.TangentAt(within);
            var slope = 1 - way.Curvature * side * across / 2;
            return new(
                way.PointAt(within) + tangent.Left * (side * across / 2),
                tangent * slope + tangent.Left * (side * growth / 2)
            );
        }
    }

    private static IEnumerable<Segment> Head(Chain path, StrokeWidth width)
    {
        var across = path.NormalAt(0) * (width.Width / 2);
        yield return new(path.Start + across, path.Start - across, 1);
    }
}
