namespace PatternGen;

/// <summary>Puts the faces of a figure in the order of its parts: by ring, then counter-clockwise.</summary>
internal static class PartOrder
{
    internal static IReadOnlyList<(FaceShape Shape, int Ring)> Of(
        IEnumerable<FaceShape> shapes,
        double near
    )
    {
        var rings = Classes(shapes, shape => shape.Distance, near);
        return
        [
            .. rings.SelectMany((ring, i) => Counterclockwise(ring, near).Select(s => (s, i + 1))),
        ];
    }

    /// <summary>Parts round one point, as in rings of circles round one centre, come by size.</summary>
    private static IEnumerable<FaceShape> Counterclockwise(List<FaceShape> ring, double near)
    {
        var distance = ring[0].Distance;
        var angles = Classes(ring, shape => shape.Angle.Radians * distance, near);
        return angles.SelectMany(angle => angle.OrderBy(shape => shape.Area));
    }

    /// <summary>In the order of a measure, those that hardly differ together.</summary>
    private static List<List<FaceShape>> Classes(
        IEnumerable<FaceShape> shapes,
        Func<FaceShape, double> measure,
        double near
    )
    {
        var classes = new List<List<FaceShape>>();
        double last = 0;
        foreach (var shape in shapes.OrderBy(measure))
        {
            var here = measure(shape);
            if (classes.Count == 0 || here - last > near)
                classes.Add([]);
            classes[^1].Add(shape);
            last = here;
        }
        return classes;
    }
}
