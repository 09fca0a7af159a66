using PatternGen.Geometry;

namespace PatternGen;

/// <summary>All that walls go down from: the sides of all rings, and after them the corners that point into the chip.</summary>
internal sealed class RoofSites
{
    /// <summary>
    /// Two sides whose directions differ by less than this, in radians, go on smoothly: there is neither a valley nor a cone
    /// between them. Depths change by less than the square of it, and valleys end apart by less than nodes merge.
    /// </summary>
    private const double Smooth = 1e-7;

    /// <summary>
    /// From this turn to the right on, in radians, the corner stops discs as a point of its own, or they would slip through
    /// between the ends of its two sides.
    /// </summary>
    private const double LeastTurn = 1e-12;

    /// <summary>
    /// Turns that differ less than this from a half one, in radians, may be either way round, and the curves tell: a node that stands for
    /// a tangency lies a little off it.
    /// </summary>
    private const double Back = 1e-3;

    private readonly RoofSite[] _sites;
    private readonly double[] _turns;
    private readonly int[] _next;
    private readonly double _slack;
    private IReadOnlyList<TouchedSide>? _cut;

    private RoofSites(RoofSite[] sides, int[] next, double slack)
    {
        _slack = slack;
        _next = next;
        _turns = new double[sides.Length];
        var corners = 0;
        for (var i = 0; i < sides.Length; i++)
        {
            _turns[i] = Turn(sides[i], sides[next[i]]);
            if (_turns[i] < -LeastTurn)
                corners++;
        }
        SideCount = sides.Length;
        _sites = corners == 0 ? sides : [.. sides, .. Corners(sides)];
    }

    internal ReadOnlySpan<RoofSite> Span => _sites;

    internal int SideCount { get; }

    internal ref readonly RoofSite this[int number] => ref _sites[number];

    internal static RoofSites Of(Contour outline, IReadOnlyList<Contour> holes)
    {
        var merge = outline.Tolerance.Merge;
        if (holes.Count > 0)
            return Of(new TouchedRings([outline, .. holes], merge).Sides, merge);
        var sides = new RoofSite[outline.Count];
        var next = new int[outline.Count];
        for (var i = 0; i < sides.Length; i++)
        {
            sides[i] = new(outline.At(i));
            next[i] = (i + 1) % sides.Length;
        }
        LinkWhereTouched(sides, next);
        return new(sides, next, merge);
    }

    private static RoofSites Of(IReadOnlyList<TouchedSide> cut, double merge)
    {
        var sides = new RoofSite[cut.Count];
        var next = new int[cut.Count];
        var first = 0;
        for (var i = 0; i < sides.Length; i++)
        {
            sides[i] = new(cut[i].Segment);
            var isLast = i + 1 == sides.Length || cut[i + 1].Ring != cut[i].Ring;
            next[i] = isLast ? first : i + 1;
            if (isLast)
                first = i + 1;
        }
        LinkWhereTouched(sides, next);
        return new(sides, next, merge) { _cut = cut };
    }

    /// <summary>Which side of which ring a site is, or a piece of.</summary>
    internal (int Ring, int Index) OwnerOf(int side) =>
        _cut is null ? (0, side) : (_cut[side].Ring, _cut[side].Index);

    /// <summary>Whether a wall goes down from a site: not from a corner that is hardly one.</summary>
    internal bool HasWall(int number) =>
        number < SideCount ? _sites[number].Half > 0 : _sites[number].Half > Smooth / 4;

    /// <summary>By how much the outline turns to the left after a side, in radians, if it goes on smoothly there; else 0.</summary>
    internal double SmoothTurnAfter(int side) =>
        side < SideCount && Math.Abs(_turns[side]) < Smooth ? _turns[side] : 0;

    /// <summary>Whether two sides go on smoothly, one after the other, so that no disc touches both.</summary>
    internal bool GoOn(int a, int b) => GoesOnTo(a, b) || GoesOnTo(b, a);

    /// <summary>
    /// How far in mm a foot on one side may lie beyond another and still count as on it: sides that touch may cross by as much for
    /// rounding, and no ground is thinner. But at a corner that points in, ground begins with nothing, and rounding must not make a
    /// touch of it: negative there.
    /// </summary>
    internal double Slack(int side, int other, double s) =>
        Embrace(side, other) && s > 0 || Embrace(other, side) && s < 0 ? -_slack : _slack;

    /// <summary>Whether one side follows the other round a corner that points in.</summary>
    private bool Embrace(int before, int after) =>
        before < SideCount && _next[before] == after && _turns[before] < -LeastTurn;

    private bool GoesOnTo(int before, int after) =>
        before < SideCount && _next[before] == after && Math.Abs(_turns[before]) < Smooth;

    /// <summary>For each side that starts at a corner that points in, the number of that corner.</summary>
    internal Dictionary<int, int> CornersByLeavingSide()
    {
        var corners = new Dictionary<int, int>();
        for (var i = 0; i < SideCount; i++)
            if (_turns[i] < -LeastTurn)
                corners[_next[i]] = SideCount + corners.Count;
        return corners;
    }

    private IEnumerable<RoofSite> Corners(RoofSite[] sides)
    {
        for (var i = 0; i < sides.Length; i++)
            if (_turns[i] < -LeastTurn)
                yield return new(sides[i].End, sides[i].EndNormal, sides[_next[i]].StartNormal);
    }

    /// <summary>
    /// Where rings touch each other or themselves in a point, the sides that bound one part of the chip there follow each
    /// other, whatever ring they are of.
    /// </summary>
    private static void LinkWhereTouched(RoofSite[] sides, int[] next)
    {
        for (var i = 0; i < sides.Length; i++)
        {
            var best = next[i];
            for (var j = 0; j < sides.Length; j++)
                if (
                    j != next[i]
                    && sides[j].Start == sides[i].End
                    && Opening(sides[i], sides[j]) < Opening(sides[i], sides[best])
                )
                    best = j;
            next[i] = best;
        }
    }

    /// <summary>The angle of the chip between a side that ends at a point and one that starts there, in radians.</summary>
    private static double Opening(in RoofSite before, in RoofSite after) =>
        Math.PI - Turn(before, after);

    /// <summary>By how much the outline turns to the left, in radians from -π to π.</summary>
    private static double Turn(in RoofSite before, in RoofSite after)
    {
        var (arriving, leaving) = (before.EndNormal, after.StartNormal);
        var turn = Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving));
        var left = Math.PI - Math.Abs(turn);
        if (left >= Back)
            return turn;
        // Back the way it came: the chip lies between the two if they bend away from it. What they open at first counts if they
        // bend too little to undo it within a quarter of their length.
        var bend = (before.Curvature + after.Curvature) * Math.Min(before.Half, after.Half);
        return Math.Abs(bend) > 4 * left ? -Math.CopySign(turn, bend) : turn;
    }
}
