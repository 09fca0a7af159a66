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
/// </remarks>
internal sealed class DesignWalk
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
    private readonly double[] _chips;
    private readonly double[] _shares;
    private readonly ChoiceSums _moreChips;
    private readonly ChoiceSums _moreShare;

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
        _chips = new double[_choices + 1];
        _shares = new double[_choices + 1];
        _moreChips = new([.. board.ChipCounts.Select(count => (double)count)]);
        _moreShare = new(board.Shares);
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
        if (!IsWanted(size))
            return;
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
            if (IsWanted(_size) && MoveNextOfSize())
                return true;
            StartNextSize();
        }
        return false;
    }

    /// <summary>Of a design and its reverse the smaller one comes first; only that of everything is nothing, which is no design.</summary>
    private bool IsWanted(int size) =>
        size >= _limits.MinOrbits
        && size <= Math.Min(_choices, _limits.MaxOrbits)
        && (!_limits.UpToReversal || 2 * size <= _choices || size == _choices);

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
            var isFound = !_limits.UpToReversal || ComesBeforeItsReverse();
            GoBack();
            if (isFound)
                return true;
        }
    }

    /// <summary>Adds a choice, unless no design that is wanted can come of it.</summary>
    private bool Add(int choice)
    {
        var chips = _chips[_depth] + _board.ChipCounts[choice];
        var share = _shares[_depth] + _board.Shares[choice];
        var (from, more) = (choice + 1, _size - _depth - 1);
        if (
            !_limits.Reach(chips + _moreChips.Most(from, more), share + _moreShare.Most(from, more))
            || !_limits.Admit(
                chips + _moreChips.Least(from, more),
                share + _moreShare.Least(from, more)
            )
        )
            return false;
        var mask = _masks[_depth] | _board.BitOf(choice);
        if (!IsLeast(choice, mask))
            return false;
        _chosen[_depth] = choice;
        _depth++;
        (_masks[_depth], _chips[_depth], _shares[_depth]) = (mask, chips, share);
        _next = choice + 1;
        return true;
    }

    private bool IsLeast(int choice, UInt128 mask)
    {
        var before = _images.AsSpan(_depth * _symmetries, _symmetries);
        var after = _images.AsSpan((_depth + 1) * _symmetries, _symmetries);
        var moved = _moved.AsSpan(choice * _symmetries, _symmetries);
        for (var i = 0; i < moved.Length; i++)
        {
            var image = before[i] | moved[i];
            if (image > mask)
                return false;
            after[i] = image;
        }
        return true;
    }

    /// <summary>Whether neither the reverse nor anything that a symmetry takes it to comes earlier.</summary>
    private bool ComesBeforeItsReverse()
    {
        if (2 * _size != _choices)
            return true;
        if ((_board.All & ~Current) > Current)
            return false;
        foreach (var image in _images.AsSpan(_depth * _symmetries, _symmetries))
            if ((_board.All & ~image) > Current)
                return false;
        return true;
    }

    private void GoBack()
    {
        _depth--;
        _next = _chosen[_depth] + 1;
    }

    private void StartNextSize()
    {
        _size++;
        StartAt(0);
    }

    private void StartAt(int choice) => (_depth, _next) = (0, choice);
}
