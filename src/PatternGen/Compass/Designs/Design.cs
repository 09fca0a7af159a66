namespace PatternGen;

/// <summary>A choice of a figure's parts to carve: cheap to have by the million, and drawn only when asked.</summary>
/// <remarks>
/// Immutable and safe to share between threads. Designs are equal if they are the same choice of one set; to compare
/// those of different sets, take their <see cref="Id"/>s. The default value belongs to no set.
/// </remarks>
public readonly record struct Design
{
    private readonly DesignBoard _board;
    private readonly UInt128 _mask;

    internal Design(DesignBoard board, UInt128 mask) => (_board, _mask) = (board, mask);

    /// <summary>
    /// A name that stays: it depends on the figure and on the parts chosen, not on the set or its limits, nor on the order
    /// in which the figure was drawn. It tells the most symmetry that the choice has and the orbits under it: <c>f1-3</c>
    /// is orbits 1 and 3 under the full symmetry of the figure, which the key drawing shows; <c>t3-1-4to7</c> orbits 1 and
    /// 4 to 7 under turns by a third.
    /// </summary>
    public string Id => DesignId.Of(_board.Figure, Chosen);

    /// <summary>Number of chips, one for each part.</summary>
    public int ChipCount
    {
        get
        {
            var count = 0;
            foreach (var choice in _board.ChoicesOf(_mask))
                count += _board.ChipCounts[choice];
            return count;
        }
    }

    /// <summary>Number of orbits, under the symmetry that the set keeps, that are carved.</summary>
    public int OrbitCount => (int)UInt128.PopCount(_mask);

    /// <summary>Numbers of those orbits, as places in <see cref="DesignSet.Orbits"/> counted from 1.</summary>
    public IReadOnlyList<int> Orbits
    {
        get
        {
            var board = _board;
            return [.. board.ChoicesOf(_mask).Select(choice => board.Choices[choice] + 1)];
        }
    }

    /// <summary>Share of the area of all parts that is carved, from 0 to 1.</summary>
    public double CarvedShare
    {
        get
        {
            double share = 0;
            foreach (var choice in _board.ChoicesOf(_mask))
                share += _board.Shares[choice];
            return share;
        }
    }

    /// <summary>The parts to carve, in the order of their numbers.</summary>
    public IReadOnlyList<DrawingPart> Parts
    {
        get
        {
            var figure = _board.Figure;
            return [.. Chosen.Select(part => figure.Parts[part])];
        }
    }

    /// <summary>The drawing that it is a design of.</summary>
    public CompassDrawing Drawing => _board.Figure.Drawing;

    internal UInt128 Mask => _mask;

    private IEnumerable<int> Chosen => _board.PartsOf(_mask);

    /// <summary>Returns the id.</summary>
    public override string ToString() => _board is null ? "no design" : Id;
}
