namespace PatternGen.Geometry;

/// <summary>Numbers joined into groups step by step; each group is named by its smallest number.</summary>
internal sealed class Groups
{
    private readonly int[] _parents;

    internal Groups(int count)
    {
        _parents = new int[count];
        for (var i = 0; i < count; i++)
            _parents[i] = i;
    }

    /// <summary>The smallest number of the group that holds one.</summary>
    internal int Of(int member)
    {
        while (_parents[member] != member)
        {
            _parents[member] = _parents[_parents[member]];
            member = _parents[member];
        }
        return member;
    }

    internal void Join(int one, int other)
    {
        var (a, b) = (Of(one), Of(other));
        if (a < b)
            _parents[b] = a;
        else
            _parents[a] = b;
    }
}
