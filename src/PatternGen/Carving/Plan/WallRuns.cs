using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The sides of a chip as a knife runs along them: from corner to corner, over joints where the outline goes on smoothly.</summary>
internal sealed class WallRuns
{
    private readonly Contour[] _rings;
    private readonly RoofWall?[][] _walls;
    private readonly CutKind _kind;
    private readonly List<ShapeCut> _cuts = [];

    private WallRuns(ChipShape shape, CutKind kind)
    {
        _rings = [shape.Outline, .. shape.Holes];
        _kind = kind;
        _walls = Array.ConvertAll(_rings, ring => new RoofWall?[ring.Count]);
        foreach (var wall in shape.Roof.Walls)
            if (!wall.IsCorner)
                _walls[wall.Ring][wall.Index] = wall;
    }

    /// <summary>One cut for each side; depths are clearances.</summary>
    internal static ShapeCut[] Of(ChipShape shape, CutKind kind)
    {
        var runs = new WallRuns(shape, kind);
        for (var ring = 0; ring < runs._rings.Length; ring++)
            runs.AddRing(ring);
        return [.. runs._cuts];
    }

    private void AddRing(int number)
    {
        var ring = _rings[number];
        int[] corners =
        [
            .. Enumerable
                .Range(0, ring.Count)
                .Where(i => IsCorner(ring.At((i + ring.Count - 1) % ring.Count), ring.At(i))),
        ];
        if (corners.Length == 0)
            Add(number, 0, ring.Count, isRound: true);
        for (var i = 0; i < corners.Length; i++)
        {
            var next = corners[(i + 1) % corners.Length];
            var count = (next - corners[i] + ring.Count - 1) % ring.Count + 1;
            Add(number, corners[i], count, isRound: false);
        }
    }

    private static bool IsCorner(Segment arriving, Segment leaving)
    {
        var angle = SmoothJoint.AngleOnLeft(arriving, leaving);
        return SmoothJoint.IsTip(angle) || SmoothJoint.IsInward(angle);
    }

    private void Add(int number, int first, int count, bool isRound)
    {
        var ring = _rings[number];
        var path = Chain.Of(Enumerable.Range(first, count).Select(i => ring.At(i % ring.Count)));
        WallFall deepest = default;
        double along = 0;
        for (var i = 0; i < count; i++)
        {
            if (_walls[number][(first + i) % ring.Count] is not { } wall)
                continue;
            var fall = wall.Longest(out var share);
            // The first of what is equally deep, or rounding would choose.
            if (!(fall.Length > deepest.Length * (1 + RoofWork.Rounding)))
                continue;
            deepest = fall;
            along = path.StartOf(i) + share * path.At(i).Length;
        }
        _cuts.Add(
            new()
            {
                Kind = _kind,
                Path = path,
                Side = _cuts.Count,
                Ring = number,
                Deepest = deepest.Valley,
                DeepestAlong = along,
                Depth = deepest.Length,
                StartDepth = AtEnd(_walls[number][first], 0, deepest),
                EndDepth = AtEnd(_walls[number][(first + count - 1) % ring.Count], 1, deepest),
                IsRound = isRound,
            }
        );
    }

    private static double AtEnd(RoofWall? wall, double share, WallFall deepest) =>
        ShapeCut.AtEnd(wall?.FallAt(share).Length ?? 0, deepest.Length);
}
