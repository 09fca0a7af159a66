namespace PatternGen.Geometry;

/// <summary>Works out which rings hold which, and so which are outer ones and which are holes.</summary>
internal static class RegionNesting
{
    internal static RegionPart[] Parts(Contour[] rings)
    {
        var parents = Parents(rings);
        var holes = new List<Contour>[rings.Length];
        for (var i = 0; i < rings.Length; i++)
        {
            if (IsOuter(parents, i))
                holes[i] = [];
        }
        for (var i = 0; i < rings.Length; i++)
            if (!IsOuter(parents, i))
                holes[parents[i]].Add(rings[i].CounterClockwise().Reversed());
        return
        [
            .. Enumerable
                .Range(0, rings.Length)
                .Where(i => IsOuter(parents, i))
                .Select(i => new RegionPart(rings[i].CounterClockwise(), holes[i])),
        ];
    }

    private static bool IsOuter(int[] parents, int ring)
    {
        var depth = 0;
        for (var parent = parents[ring]; parent >= 0; parent = parents[parent])
            depth++;
        return depth % 2 == 0;
    }

    /// <summary>The smallest ring round each ring, or -1.</summary>
    private static int[] Parents(Contour[] rings)
    {
        var parents = new int[rings.Length];
        Array.Fill(parents, -1);
        if (rings.Length == 1)
            return parents;
        var boxes = new Extents[rings.Length];
        var areas = new double[rings.Length];
        for (var i = 0; i < rings.Length; i++)
            (boxes[i], areas[i]) = (rings[i].Extents, rings[i].Area);
        new ExtentsGrid(boxes).VisitPairs(
            (first, second) =>
            {
                var (inner, outer) = IsSmaller(second, first) ? (second, first) : (first, second);
                if (
                    (parents[inner] < 0 || IsSmaller(outer, parents[inner]))
                    && boxes[outer].Grown(Tolerance.For(boxes[outer]).Merge).Contains(boxes[inner])
                    && Holds(rings[outer], rings[inner])
                )
                    parents[inner] = outer;
            }
        );
        return parents;

        // Of equal rings the later one lies inside.
        bool IsSmaller(int a, int b) => areas[a] != areas[b] ? areas[a] < areas[b] : a > b;
    }

    /// <summary>The first corner or middle that is not on the outer ring decides; a ring that lies all on it is inside.</summary>
    private static bool Holds(Contour outer, Contour inner)
    {
        for (var i = 0; i < inner.Count; i++)
        {
            var segment = inner.At(i);
            if (Decides(segment.Start) is { } start)
                return start;
            if (Decides(segment.Middle) is { } middle)
                return middle;
        }
        return true;

        bool? Decides(Point point) =>
            outer.Locate(point) switch
            {
                Containment.Inside => true,
                Containment.Outside => false,
                _ => null,
            };
    }
}
