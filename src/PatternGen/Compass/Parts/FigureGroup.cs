namespace PatternGen;

/// <summary>The symmetries of a figure as permutations of its faces or parts.</summary>
internal sealed class FigureGroup
{
    private readonly int[] _turn;

    /// <param name="order">Number of turns.</param>
    /// <param name="turn">Where the smallest turn takes each.</param>
    /// <param name="mirror">Where the first mirror takes each, or null.</param>
    internal FigureGroup(int order, int[] turn, int[]? mirror) =>
        (Order, _turn, Mirror) = (order, turn, mirror);

    internal int Order { get; }

    internal int[]? Mirror { get; }

    /// <summary>Where a turn by some of the smallest ones takes each.</summary>
    internal int[] Turn(int times)
    {
        var turned = Identity();
        for (var i = 0; i < times; i++)
            turned = Array.ConvertAll(turned, at => _turn[at]);
        return turned;
    }

    /// <summary>Where the turns, no turn first, take each, and then those followed by the mirror.</summary>
    internal IEnumerable<int[]> All()
    {
        foreach (var mirror in Mirror is null ? [null] : (int[]?[])[null, Mirror])
        {
            var turned = Identity();
            for (var i = 0; i < Order; i++)
            {
                yield return mirror is null ? turned : Array.ConvertAll(turned, at => mirror[at]);
                turned = Array.ConvertAll(turned, at => _turn[at]);
            }
        }
    }

    /// <summary>The same for things in another order.</summary>
    /// <param name="numbers">The new number of each.</param>
    internal FigureGroup Renumbered(int[] numbers)
    {
        return new(Order, Moved(_turn), Mirror is null ? null : Moved(Mirror));

        int[] Moved(int[] from)
        {
            var to = new int[from.Length];
            for (var i = 0; i < from.Length; i++)
                to[numbers[i]] = numbers[from[i]];
            return to;
        }
    }

    private int[] Identity() => [.. Enumerable.Range(0, _turn.Length)];
}
