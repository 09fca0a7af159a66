namespace PatternGen;

/// <summary>A choice of a figure's parts to carve: cheap to have by the million, and drawn only when asked.</summary>
/// <remarks>
/// Immutable and safe to share between threads. Designs are equal if they are the same choice of one set; to compare
/// those of different sets, take their <see cref="Id"/>s. The default value belongs to no set: its properties throw an
/// <see cref="InvalidOperationException"/>.
/// </remarks>
public readonly record struct Design
{
    private readonly DesignBoard? _board;
    private readonly UInt128 _mask;

    internal Design(DesignBoard board, UInt128 mask) => (_board, _mask) = (board, mask);

    /// <summary>
    /// A name that stays: it depends on the figure and on the parts chosen, not on the set or its limits, nor on the order
    /// in which the figure was drawn. It tells the most symmetry that the choice has and the orbits under it: <c>f1-3</c>
    /// is orbits 1 and 3 under the full symmetry of the figure, which the key drawing shows; <c>t3-1-4to7</c> orbits 1 and
    /// 4 to 7 under turns by a third.
    /// </summary>
    /// <exception cref="InvalidOperationException">It is the default value.</exception>
    public string Id => DesignId.Of(Board.Figure, Chosen);

    /// <summary>Number of chips, one for each part.</summary>
    /// <exception cref="InvalidOperationException">It is the default value.</exception>
    public int ChipCount
    {
        get
        {
            var board = Board;
            var count = 0;
            foreach (var choice in board.ChoicesOf(_mask))
                count += board.ChipCounts[choice];
            return count;
        }
    }

    /// <summary>Number of orbits, under the symmetry that the set keeps, that are carved.</summary>
    /// <exception cref="InvalidOperationException">It is the default value.</exception>
    public int OrbitCount => (int)UInt128.PopCount(Board.All & _mask);

    /// <summary>Numbers of those orbits, as places in <see cref="DesignSet.KeptOrbits"/> counted from 1.</summary>
    /// <remarks>
    /// They are not the numbers that the key drawing shows, <see cref="DrawingPart.Orbit"/>, unless the set keeps the full
    /// symmetry: do not pass them to <c>CarveOrbits</c>, but carve the design itself.
    /// </remarks>
    /// <exception cref="InvalidOperationException">It is the default value.</exception>
    public IReadOnlyList<int> KeptOrbits
    {
        get
        {
            var board = Board;
            return [.. board.ChoicesOf(_mask).Select(choice => board.Choices[choice] + 1)];
        }
    }

    /// <summary>Share of the area of all parts that is carved, from 0 to 1.</summary>
    /// <exception cref="InvalidOperationException">It is the default value.</exception>
    public double CarvedShare
    {
        get
        {
            var board = Board;
            double share = 0;
            foreach (var choice in board.ChoicesOf(_mask))
                share += board.Shares[choice];
            return share;
        }
    }

    /// <summary>The parts to carve, in the order of their numbers.</summary>
    /// <exception cref="InvalidOperationException">It is the default value.</exception>
    public IReadOnlyList<DrawingPart> Parts
    {
        get
        {
            var figure = Board.Figure;
            return [.. Chosen.Select(part => figure.Parts[part])];
        }
    }

    /// <summary>The drawing that it is a design of.</summary>
    /// <exception cref="InvalidOperationException">It is the default value.</exception>
    public CompassDrawing Drawing => Board.Figure.Drawing;

    private DesignBoard Board =>
        _board
        ?? throw new InvalidOperationException(
            "The default value is no design; take one from CompassDrawing.AllDesigns."
        );

    private IEnumerable<int> Chosen => Board.PartsOf(_mask);

    /// <summary>Returns the id; of the default value, <c>no design</c>.</summary>
    public override string ToString() => _board is null ? "no design" : Id;
}
