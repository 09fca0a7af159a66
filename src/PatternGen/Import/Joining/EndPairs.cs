using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds which loose ends of open runs belong together.</summary>
/// <remarks>
/// Two ends that lie together are one joint. Where more meet, in a fork, only ends are joined that run smoothly into each
/// other and into no third one, as the two halves of a line on which another one ends; anything else would be a guess,
/// and the runs stay open there. Ends that are the same point but for rounding are joined before those that are only near, so
/// that a gap is not bridged where something fits.
/// </remarks>
internal sealed class EndPairs
{
    private const int None = -1;

    /// <summary>
    /// Sine of the angle by which two runs may turn where one goes on smoothly as the other. Files with six decimals turn a line
    /// of a millimetre by 1e-6; blunt corners turn by far more.
    /// </summary>
    private const double Smooth = 1e-3;

    /// <summary>Ends in one point that are compared each with each. More are no fork but a star, all of which stay open.</summary>
    private const int MostCompared = 100;

    private readonly Chain[] _runs;
    private readonly int[] _partners;
    private readonly bool[] _isSettled;
    private readonly Point[] _places;
    private readonly double _same;

    /// <param name="runs">The open runs.</param>
    /// <param name="same">Ends this near are one but for rounding.</param>
    /// <param name="near">Ends this near are joined too.</param>
    internal EndPairs(Chain[] runs, double same, double near)
    {
        _runs = runs;
        _same = same;
        _partners = new int[2 * runs.Length];
        Array.Fill(_partners, None);
        _isSettled = new bool[_partners.Length];
        _places = new Point[_partners.Length];
        for (var end = 0; end < _places.Length; end++)
            _places[end] = RunEnd.Place(runs, end);
        Join(same);
        if (near > same)
            Join(near);
    }

    /// <summary>Places where ends meet that were left open, with the number of ends there.</summary>
    internal List<(Point Place, int Ends)> Forks { get; } = [];

    /// <summary>The widest gap that was closed in mm, where the first that wide is, and how many there were.</summary>
    internal (double Widest, Point Place, int Count) Closed { get; private set; }

    /// <summary>The end that an end is joined to, or a negative number.</summary>
    internal int PartnerOf(int end) => _partners[end];

    /// <summary>Where an end comes to lie: the ends of a joint, or of a fork, at one point.</summary>
    internal Point PlaceOf(int end) => _places[end];

    private void Join(double distance)
    {
        var together = EndGroups.Of(_places, distance);
        var loose = new List<int>();
        for (var i = 0; i < together.Count; i++)
        {
            var ends = together[i];
            if (ends.Length == 1)
                continue;
            loose.Clear();
            var settled = None;
            foreach (var end in ends)
                if (!_isSettled[end])
                    loose.Add(end);
                else if (settled == None)
                    settled = end;
            Meet(loose, settled);
            if (loose.Count == 2)
                Pair(loose[0], loose[1]);
            else if (loose.Count > 2)
                PairSmooth(loose);
        }
    }

    /// <summary>Moves loose ends to where a joint is already, or else to the middle of the box round them.</summary>
    private void Meet(List<int> loose, int settled)
    {
        if (loose.Count == 0)
            return;
        var box = Extents.Of(_places[settled == None ? loose[0] : settled]);
        foreach (var end in loose)
            box = box.Including(_places[end]);
        var meeting = settled == None ? box.Centre : _places[settled];
        foreach (var end in loose)
            _places[end] = meeting;
        var gap = (box.Max - box.Min).Length;
        if (gap > _same)
            Closed =
                gap > Closed.Widest
                    ? (gap, meeting, Closed.Count + 1)
                    : Closed with
                    {
                        Count = Closed.Count + 1,
                    };
    }

    private void PairSmooth(List<int> ends)
    {
        var directions = ends.ConvertAll(end => RunEnd.Inwards(_runs, end).Unit());
        var opposite = new int[ends.Count];
        for (var i = 0; i < ends.Count; i++)
            opposite[i] = ends.Count <= MostCompared ? OnlyOpposite(directions, i) : None;
        var open = ends.Count;
        for (var i = 0; i < ends.Count; i++)
            if (opposite[i] > i && opposite[opposite[i]] == i)
            {
                Pair(ends[i], ends[opposite[i]]);
                open -= 2;
            }
        foreach (var end in ends)
            _isSettled[end] = true;
        if (open > 1)
            Forks.Add((_places[ends[0]], ends.Count));
    }

    /// <summary>The one direction that runs opposite, or a negative number if none or several do.</summary>
    private static int OnlyOpposite(List<Vector> directions, int of)
    {
        var found = None;
        for (var i = 0; i < directions.Count; i++)
        {
            if (
                i == of
                || directions[of].Dot(directions[i]) >= 0
                || Math.Abs(directions[of].Cross(directions[i])) > Smooth
            )
                continue;
            if (found != None)
                return None;
            found = i;
        }
        return found;
    }

    private void Pair(int end, int other)
    {
        (_partners[end], _partners[other]) = (other, end);
        (_isSettled[end], _isSettled[other]) = (true, true);
    }
}
