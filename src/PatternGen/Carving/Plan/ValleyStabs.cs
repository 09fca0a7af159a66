using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The stabs along the valleys of a chip: the point stands in the deepest place of each and is drawn out of it towards its ends.</summary>
/// <remarks>Harris W. Moore, Chip Carving (1922): a vertical cut, the knife's point at the deepest part; then the blade is forced under to lift the chip.</remarks>
internal static class ValleyStabs
{
    /// <summary>Pieces that stand for a valley that is no line.</summary>
    private const int Pieces = 16;

    /// <summary>Depths are clearances.</summary>
    internal static ShapeCut[] Of(Roof roof)
    {
        var stabs = new List<ShapeCut>();
        foreach (var valley in roof.Valleys)
            Add(valley, stabs);
        return [.. stabs.OrderByDescending(stab => stab.Depth)];
    }

    private static void Add(Valley valley, List<ShapeCut> stabs)
    {
        var deepest = valley.DeepestShare();
        if (deepest > 0)
            stabs.Add(Along(valley, deepest, 0));
        if (deepest < 1)
            stabs.Add(Along(valley, deepest, 1));
    }

    private static ShapeCut Along(Valley valley, double from, double to)
    {
        var (first, last) = (valley.PlaceAt(from), valley.PlaceAt(to));
        var pieces = valley.Kind == ValleyKind.Line ? 1 : Pieces;
        var path = new Chain(
            Enumerable
                .Range(0, pieces + 1)
                .Select(i => new Vertex(valley.PlaceAt(from + (to - from) * i / pieces).Point))
        );
        return new()
        {
            Kind = CutKind.Stab,
            Path = path,
            Side = -1,
            Deepest = first.Point,
            DeepestAlong = 0,
            Depth = first.Clearance,
            StartDepth = first.Clearance,
            EndDepth = ShapeCut.AtEnd(last.Clearance, first.Clearance),
        };
    }
}
