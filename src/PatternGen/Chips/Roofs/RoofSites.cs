using PatternGen.Geometry;

namespace PatternGen;

/// <summary>All that walls go down from: the sides of all rings, and after them the corners that point into the chip.</summary>
internal sealed class RoofSites
{
    /// <summary>
    /// Two sides whose directions differ by less than this, in radians, go on smoothly: there is neither a valley nor a cone
    /// between them. Depths change by less than the square of it.
    /// </summary>
    private const double Smooth = 1e-5;

    /// <summary>
    /// From this turn to the right on, in radians, the corner stops discs as a point of its own, or they would slip through
    /// between the ends of its two sides.
    /// </summary>
    private const double LeastTurn = 1e-12;

    /// <summary>Turns that differ less than this from a half one, in radians, may be either way round: the curves tell.</summary>
    private const double Back = 1e-6;

    private readonly RoofSite[] _sites;
    private readonly double[] _turns;
    private readonly int[] _next;

    private RoofSites(RoofSite[] sides, int[] next)
    {
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
        var count = outline.Count;
        foreach (var hole in holes)
            count += hole.Count;
        var sides = new RoofSite[count];
        var next = new int[count];
        var placed = 0;
        AddRing(outline);
        foreach (var hole in holes)
            AddRing(hole);
        Repair(sides, next);
        return new(sides, next);

        void AddRing(Contour ring)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                sides[placed + i] = new(ring.At(i));
                next[placed + i] = placed + (i + 1) % ring.Count;
            }
            placed += ring.Count;
        }
    }

    /// <summary>Whether a wall goes down from a site: not from a corner that is hardly one.</summary>
    internal bool HasWall(int number) =>
        number < SideCount ? _sites[number].Half > 0 : _sites[number].Half > Smooth / 4;

    /// <summary>Whether two sides go on smoothly, one after the other, so that no disc touches both.</summary>
    internal bool GoOn(int a, int b) => GoesOnTo(a, b) || GoesOnTo(b, a);

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
    private static void Repair(RoofSite[] sides, int[] next)
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
        var bend = before.Curvature + after.Curvature;
        // Back the way it came: the chip lies between the two if they bend away from it.
        return Math.PI - Math.Abs(turn) < Back && bend != 0 ? -Math.CopySign(turn, bend) : turn;
    }
}
