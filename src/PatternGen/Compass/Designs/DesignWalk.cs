namespace PatternGen;

/// <summary>Walks through the designs of a set in order: by number of choices, then by the choices.</summary>
/// <remarks>
/// <para>For each number of choices, the walk adds choices one by one in ascending order and goes back when it has enough.
/// Of designs that the full symmetry takes to each other only the first one in the order is wanted, called least here. The
/// first choices of a least design are a least design themselves: if a symmetry took them to something that comes
/// earlier, it would take the whole design to something that comes earlier too, since one more choice moves what follows
/// the difference and never the difference backwards. So the walk leaves a branch as soon as it is not least
/// (R. C. Read, Every one a winner, 1978), and looks at few designs that it does not yield. Some branches that are least
/// end without a design, mostly the last ones of a number of choices: there are never more of them than there are designs
/// of fewer choices.</para>
/// <para>Where each symmetry takes the choices so far is kept for every step, so that one more choice costs one bit a
/// symmetry.</para>
/// <para>Of a design and its reverse the smaller one comes first. Up to reversal, the walk passes over what has more than half
/// of the choices where the reverses are within the limits too; that of everything is nothing, which is no design.</para>
/// </remarks>
internal sealed partial class DesignWalk
{
    private readonly DesignBoard _board;
    private readonly DesignLimits _limits;
    private readonly int _choices;
    private readonly int _symmetries;

    /// <summary>The bit that each symmetry moves each choice to, a choice after the other.</summary>
    private readonly UInt128[] _moved;

    /// <summary>Where each symmetry takes the choices so far, a step after the other.</summary>
    private readonly UInt128[] _images;

    private readonly UInt128[] _masks;
    private readonly int[] _chosen;
    private readonly CarvedSize[] _sizes;
    private readonly ChoiceSums _moreChips;
    private readonly ChoiceSums _moreShare;
    private readonly CarvedSize _everything;

    private int _size;
    private int _depth;
    private int _next;

    internal DesignWalk(DesignBoard board, DesignLimits limits)
    {
        (_board, _limits) = (board, limits);
        _choices = board.Choices.Length;
        // The first symmetry moves nothing and has nothing to say.
        _symmetries = board.Permutations.Length - 1;
        _moved = new UInt128[_choices * _symmetries];
        for (var choice = 0; choice < _choices; choice++)
        for (var i = 0; i < _symmetries; i++)
            _moved[choice * _symmetries + i] = board.BitOf(board.Permutations[i + 1][choice]);
        _images = new UInt128[(_choices + 1) * _symmetries];
        _masks = new UInt128[_choices + 1];
        _chosen = new int[_choices + 1];
        _sizes = new CarvedSize[_choices + 1];
        _moreChips = new([.. board.ChipCounts.Select(count => (double)count)]);
        _moreShare = new(board.Shares);
        _everything = Most(0, _choices);
        _size = Math.Max(1, limits.MinOrbits) - 1;
        StartNextSize();
    }

    /// <summary>The design that the walk stands at.</summary>
    internal UInt128 Current { get; private set; }

    /// <summary>Goes on behind a design, whether or not it is one that the walk would stop at.</summary>
    internal void GoBehind(UInt128 mask)
    {
        var size = (int)UInt128.PopCount(mask);
        if (size < _size)
            return;
        _size = size;
        StartAt(0);
        foreach (var choice in _board.ChoicesOf(mask))
        {
            _next = choice + 1;
            // What follows a first part that is not least, or too large, is passed over with it.
            if (!Add(choice))
                return;
        }
        GoBack();
    }

    /// <summary>Goes to the next design; false after the last one.</summary>
    internal bool MoveNext()
    {
        while (_size <= Math.Min(_choices, _limits.MaxOrbits))
        {
            if (MoveNextOfSize())
                return true;
            StartNextSize();
        }
        return false;
    }

    private bool MoveNextOfSize()
    {
        while (true)
        {
            if (_next > _choices - (_size - _depth))
            {
                if (_depth == 0)
                    return false;
                GoBack();
                continue;
            }
            var choice = _next++;
            if (!Add(choice))
                continue;
            if (_depth < _size)
                continue;
            Current = _masks[_depth];
            var isLeftOut = IsLeftOutForItsReverse();
            GoBack();
            if (!isLeftOut)
                return true;
        }
    }

    private void StartNextSize()
    {
        _size++;
        StartAt(0);
    }

    private void StartAt(int choice) => (_depth, _next) = (0, choice);
}
