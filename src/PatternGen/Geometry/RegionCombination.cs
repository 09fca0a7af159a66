namespace PatternGen.Geometry;

/// <summary>What of several regions is kept, from the arrangement of all their outlines.</summary>
/// <remarks>
/// Outlines have their region on the left. So each curve that runs along an edge adds one to how many regions hold the face
/// on its left, against the face on its right; from face to face, starting outside, this tells for each face in how many
/// regions it lies. The faces to be kept are then bounded by the edges with one of them on the left and none on the right.
/// </remarks>
internal sealed class RegionCombination
{
    private readonly Arrangement _arrangement;
    private readonly int _firstCurves;
    private readonly int[] _kept;

    /// <param name="arrangement">Of the outlines of all regions, those of the first one first.</param>
    /// <param name="firstCurves">How many curves are the first region's.</param>
    /// <param name="regions">How many regions there are.</param>
    /// <param name="keeps">Which faces are kept.</param>
    private RegionCombination(Arrangement arrangement, int firstCurves, int regions, Keeps keeps)
    {
        _arrangement = arrangement;
        _firstCurves = firstCurves;
        var held = Held();
        _kept =
        [
            .. Enumerable
                .Range(0, held.Length)
                .Where(face => keeps(held[face].InFirst, held[face].InOthers, regions)),
        ];
    }

    /// <summary>Tells from how often a face lies in the first region, and how often in others of so many regions, whether it is kept.</summary>
    internal delegate bool Keeps(int inFirst, int inOthers, int regions);

    internal static Region Of(Region[] regions, Keeps keeps)
    {
        var arrangement = Arrangement.Of(regions.SelectMany(Curves));
        var first = Curves(regions[0]).Count();
        return new(new RegionCombination(arrangement, first, regions.Length, keeps).Rings());

        static IEnumerable<Curve> Curves(Region region) =>
            region.Contours.SelectMany(ring => ring.Segments).Select(side => new Curve(side));
    }

    /// <summary>For each face, how often the first region and the others hold it.</summary>
    private (int InFirst, int InOthers)[] Held()
    {
        var held = new (int InFirst, int InOthers)[_arrangement.Faces.Count];
        var isKnown = new bool[held.Length];
        isKnown[0] = true;
        var next = new Queue<int>([0]);
        while (next.TryDequeue(out var face))
            foreach (
                var halfEdge in _arrangement.WalksRound(face).SelectMany(_arrangement.WalkFrom)
            )
            {
                var beyond = _arrangement.FaceOf(halfEdge ^ 1);
                if (isKnown[beyond])
                    continue;
                isKnown[beyond] = true;
                var (first, others) = Gained(halfEdge);
                held[beyond] = (held[face].InFirst - first, held[face].InOthers - others);
                next.Enqueue(beyond);
            }
        return held;
    }

    /// <summary>How many regions more hold the face on the left of a half-edge than that on its right.</summary>
    private (int First, int Others) Gained(int halfEdge)
    {
        var piece = _arrangement.EdgePieces[halfEdge >> 1];
        var (first, others) = (0, 0);
        foreach (var source in piece.Sources)
        {
            var frame = new ArcFrame(_arrangement.Curves[source].Segment);
            var isAlong = frame.TangentAt(frame.Foot(piece.Middle)).Dot(piece.Curve.Chord) > 0;
            var gained = isAlong == ((halfEdge & 1) == 0) ? 1 : -1;
            if (source < _firstCurves)
                first += gained;
            else
                others += gained;
        }
        return (first, others);
    }

    /// <summary>The rings round what is kept; those thinner than the merge distance are left out.</summary>
    private List<Contour> Rings()
    {
        var rings = FaceOutline.Rings(_arrangement, _kept);
        var merge = _arrangement.Tolerance.Merge;
        rings.RemoveAll(ring => ring.Area <= merge * ring.Length / 2);
        return rings;
    }
}
