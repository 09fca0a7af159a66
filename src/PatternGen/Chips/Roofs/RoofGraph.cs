using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Walls, valleys and nodes of a roof as objects, made when they are asked for.</summary>
internal sealed class RoofGraph
{
    /// <summary>Ends of valleys nearer than this share of the chip's size are one node: where sides are nearly parallel, rounding moves them by the root of the digits.</summary>
    private const double NodeShare = 1e-7;

    private readonly RoofWork _work;
    private readonly List<End> _ends = [];

    internal RoofGraph(Roof roof)
    {
        _work = roof.Work;
        var extents = roof.Outline.Extents;
        var merge = NodeShare * Math.Max(extents.Width, extents.Height);
        Walls = [.. MakeWalls()];
        CollectEnds();
        var numbers = RoofNodes.Number(_ends.ConvertAll(end => end.Place), merge);
        Nodes = MakeNodes(numbers);
        Valleys = [.. MakeValleys(numbers)];
        DeepestLines =
        [
            .. Valleys.Where(valley =>
                valley.IsLevel && valley.Start.Clearance >= roof.Clearance * (1 - NodeShare)
            ),
        ];
    }

    internal IReadOnlyList<RoofWall> Walls { get; }

    internal IReadOnlyList<Valley> Valleys { get; }

    internal IReadOnlyList<RoofNode> Nodes { get; }

    internal IReadOnlyList<Valley> DeepestLines { get; }

    /// <summary>The walls of the sides in order, each corner's before that of the side that starts there.</summary>
    private IEnumerable<RoofWall> MakeWalls()
    {
        var corners = _work.Sites.CornersByLeavingSide();
        for (var side = 0; side < _work.Sites.SideCount; side++)
        {
            var (ring, index) = _work.Sites.OwnerOf(side);
            if (corners.TryGetValue(side, out var corner) && HasPieces(corner))
                yield return new(_work, corner, ring, index);
            if (HasPieces(side))
                yield return new(_work, side, ring, index);
        }
    }

    private bool HasPieces(int site) => _work.PiecesOf(site).Length > 0;

    /// <summary>The ends of each valley, one pair after the other. Both walls know it; the first is asked.</summary>
    private void CollectEnds()
    {
        for (var site = 0; site < _work.Sites.Span.Length; site++)
            foreach (var piece in _work.PiecesOf(site))
            {
                if (
                    piece.Partner == RoofPiece.OwnCentre
                    || (piece.Partner < site && HasPieces(piece.Partner))
                )
                    continue;
                _ends.Add(EndAt(site, piece, piece.From));
                _ends.Add(EndAt(site, piece, piece.To));
            }
    }

    private End EndAt(int site, RoofPiece piece, double s)
    {
        var radius = _work.RadiusAt(site, piece, s);
        return new(site, piece, _work.ValleyAt(site, s, radius), radius);
    }

    private RoofNode[] MakeNodes(List<int> numbers)
    {
        var firsts = new int[numbers.Count == 0 ? 0 : numbers.Max() + 1];
        var counts = new int[firsts.Length];
        for (var i = numbers.Count - 1; i >= 0; i--)
            firsts[numbers[i]] = i;
        for (var i = 0; i < numbers.Count; i += 2)
            if (numbers[i] != numbers[i + 1])
            {
                counts[numbers[i]]++;
                counts[numbers[i + 1]]++;
            }
        return [.. firsts.Select((end, node) => Node(_ends[end], counts[node]))];

        static RoofNode Node(End end, int valleys) => new(end.Place, end.Clearance, valleys);
    }

    private IEnumerable<Valley> MakeValleys(List<int> numbers)
    {
        for (var i = 0; i < numbers.Count; i += 2)
            if (numbers[i] != numbers[i + 1])
                yield return new(
                    _work,
                    _ends[i].Site,
                    _ends[i].Piece,
                    Nodes[numbers[i]],
                    Nodes[numbers[i + 1]]
                );
    }

    private readonly record struct End(int Site, RoofPiece Piece, Point Place, double Clearance);
}
