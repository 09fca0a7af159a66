using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds the shortest move that takes a chip far enough from several edges, as from both that meet in a corner.</summary>
internal static class ShortestMove
{
    /// <summary>Returns the shortest move that goes far enough in each of the directions; null if none does, as between edges too near each other.</summary>
    /// <param name="needs">Directions of length 1, and how far to go in each, in mm; at least one.</param>
    internal static Vector? Of(IReadOnlyList<(Vector Away, double Lacking)> needs)
    {
        // Few needs decide; the others are met on the way, and only those that are not are looked at.
        var deciding = new List<(Vector Away, double Lacking)>();
        var move = Vector.Zero;
        while (true)
        {
            var worst = needs.MaxBy(need => Missing(need, move));
            if (Missing(worst, move) <= InspectionJob.Slack / 2)
                return move;
            deciding.Add(worst);
            if (Meeting(deciding) is not { } longer)
                return null;
            move = longer;
        }
    }

    /// <summary>The shortest move that meets a few needs goes straight along one of them, or just meets two.</summary>
    private static Vector? Meeting(List<(Vector Away, double Lacking)> needs)
    {
        Vector? shortest = null;
        for (var i = 0; i < needs.Count; i++)
        {
            Try(needs[i].Away * needs[i].Lacking);
            for (var j = 0; j < i; j++)
            {
                var (one, other) = (needs[i], needs[j]);
                var across = one.Away.Cross(other.Away);
                if (across != 0)
                    Try((one.Away.Left * other.Lacking - other.Away.Left * one.Lacking) / across);
            }
        }
        return shortest;

        void Try(Vector move)
        {
            if (shortest is { } known && known.LengthSquared <= move.LengthSquared)
                return;
            if (needs.TrueForAll(need => Missing(need, move) <= InspectionJob.Slack / 4))
                shortest = move;
        }
    }

    private static double Missing((Vector Away, double Lacking) need, Vector move) =>
        need.Lacking - need.Away.Dot(move);
}
