using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds which ends of valleys are one node.</summary>
internal static class RoofNodes
{
    /// <summary>
    /// Returns the number of the node of each place, counted from 0 in the order in which they first appear. Places that are near each
    /// other by way of places in between are one as well, or a valley would join nodes that its neighbours don't.
    /// </summary>
    internal static List<int> Number(List<Point> places, double merge)
    {
        var firsts = Enumerable.Range(0, places.Count).ToArray();
        var order = Enumerable.Range(0, places.Count).OrderBy(i => places[i].X).ToArray();
        for (var i = 0; i < order.Length; i++)
        for (var j = i + 1; j < order.Length; j++)
        {
            if (places[order[j]].X - places[order[i]].X > merge)
                break;
            if (places[order[i]].DistanceTo(places[order[j]]) <= merge)
                Join(order[i], order[j]);
        }
        var numbers = new Dictionary<int, int>();
        return
        [
            .. places.Select(
                (_, i) =>
                {
                    numbers.TryAdd(First(i), numbers.Count);
                    return numbers[First(i)];
                }
            ),
        ];

        void Join(int one, int other)
        {
            var (a, b) = (First(one), First(other));
            firsts[Math.Max(a, b)] = Math.Min(a, b);
        }

        int First(int i)
        {
            while (firsts[i] != i)
                i = firsts[i] = firsts[firsts[i]];
            return i;
        }
    }
}
