namespace PatternGen;

// One choice more or less, and whether anything that is wanted can come of it.
internal sealed partial class DesignWalk
{
    /// <summary>Whether the reverses of all designs of this size come earlier and, for their number of choices, may be wanted.</summary>
    private bool IsLargerThanReverse =>
        _limits.UpToReversal && 2 * _size > _choices && _limits.AdmitOrbits(_choices - _size);

    /// <summary>Adds a choice, unless no design that is wanted can come of it.</summary>
    private bool Add(int choice)
    {
        var size =
            _sizes[_depth] + new CarvedSize(_board.ChipCounts[choice], _board.Shares[choice]);
        var (from, more) = (choice + 1, _size - _depth - 1);
        var (least, most) = (size + Least(from, more), size + Most(from, more));
        if (!_limits.Reach(most) || !_limits.Admit(least))
            return false;
        if (IsLargerThanReverse && _limits.AdmitReverses(least, most, _everything))
            return false;
        var mask = _masks[_depth] | _board.BitOf(choice);
        if (!IsLeast(choice, mask))
            return false;
        _chosen[_depth] = choice;
        _depth++;
        (_masks[_depth], _sizes[_depth]) = (mask, size);
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

    /// <summary>
    /// Whether the design of half the choices that the walk stands at is left out for its reverse: that is wanted too, and it
    /// or something that a symmetry takes it to comes earlier.
    /// </summary>
    private bool IsLeftOutForItsReverse()
    {
        if (
            !_limits.UpToReversal
            || 2 * _size != _choices
            || !_limits.AdmitReverses(_sizes[_depth], _sizes[_depth], _everything)
        )
            return false;
        if ((_board.All & ~Current) > Current)
            return true;
        foreach (var image in _images.AsSpan(_depth * _symmetries, _symmetries))
            if ((_board.All & ~image) > Current)
                return true;
        return false;
    }

    private void GoBack()
    {
        _depth--;
        _next = _chosen[_depth] + 1;
    }

    private CarvedSize Least(int from, int count) =>
        new(_moreChips.Least(from, count), _moreShare.Least(from, count));

    private CarvedSize Most(int from, int count) =>
        new(_moreChips.Most(from, count), _moreShare.Most(from, count));
}
