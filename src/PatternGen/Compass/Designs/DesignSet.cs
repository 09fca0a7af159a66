using System.Collections;
using System.Numerics;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The designs of a figure: every choice of its parts, as far as symmetry is kept, each once however it may be turned or
/// mirrored.
/// </summary>
/// <remarks>
/// Designs come by the number of orbits carved, simple ones first, and then by the orbits' numbers; always in the same
/// order, made one at a time as they are asked for. Two designs that the figure's full symmetry takes to each other are the
/// same design on wood, so only the first of them comes. Nothing carved is no design; everything carved is one. Parts that
/// always stay ground are never chosen. Immutable and safe to share between threads.
/// </remarks>
public sealed class DesignSet : IEnumerable<Design>
{
    private readonly DesignBoard _board;
    private readonly DesignLimits _limits;
    private readonly UInt128? _after;

    internal DesignSet(DesignBoard board)
        : this(board, new(), null) { }

    private DesignSet(DesignBoard board, DesignLimits limits, UInt128? after) =>
        (_board, _limits, _after) = (board, limits, after);

    /// <summary>The drawing.</summary>
    public CompassDrawing Drawing => _board.Figure.Drawing;

    /// <summary>How much of the figure's symmetry every design keeps.</summary>
    public Symmetry Keep => _board.Keep;

    /// <summary>The parts that are carved together or not at all, orbit by orbit, those that stay ground included.</summary>
    /// <remarks>
    /// These are orbits under <see cref="Keep"/>, 24 of one part each for seven circles where nothing is kept. The key drawing
    /// and <c>CarveOrbits</c> count those under the figure's full symmetry, <see cref="DrawingPart.Orbit"/>: 4.
    /// </remarks>
    public IReadOnlyList<IReadOnlyList<DrawingPart>> KeptOrbits => _board.OrbitParts;

    /// <summary>
    /// How many designs there are, counted by Burnside's lemma without making them: with k orbits to choose from and the
    /// full symmetry kept, 2^k - 1. Null where the carved share or the number of chips is limited, or the set begins
    /// behind a design: then only going through them tells.
    /// </summary>
    public BigInteger? Count =>
        _limits.LimitWhatIsCarved || _after is not null ? null : DesignCount.Of(_board, _limits);

    /// <summary>Returns the set with only the first of each design and its reverse, which carves what the other leaves.</summary>
    /// <remarks>
    /// A design whose reverse is beyond the set's limits stays, whether these are set before or afterwards. The reverse of
    /// everything carved is nothing carved and so no design: everything carved stays. Of 2^k - 1 designs 2^(k - 1) are left.
    /// </remarks>
    public DesignSet UpToReversal() => With(_limits with { UpToReversal = true });

    /// <summary>Returns the set with only designs that carve so much of the figure.</summary>
    /// <param name="min">Least share of the area of all parts, from 0 to 1.</param>
    /// <param name="max">Greatest share, from the least to 1: <c>WithCarvedShare(0.4, 0.6)</c> for about as much carved as left.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is not between 0 and 1, or the greatest is under the least.</exception>
    public DesignSet WithCarvedShare(double min, double max)
    {
        Guard.Within(min, 0, 1);
        Guard.Within(max, min, 1);
        return With(_limits with { MinShare = min, MaxShare = max });
    }

    /// <summary>Returns the set with only designs of so many chips.</summary>
    /// <param name="min">Fewest, from 1.</param>
    /// <param name="max">Most, from the fewest.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fewest are under 1, or the most under the fewest.</exception>
    public DesignSet WithChipCount(int min, int max)
    {
        Guard.Within(min, 1, int.MaxValue);
        Guard.Within(max, min, int.MaxValue);
        return With(_limits with { MinChips = min, MaxChips = max });
    }

    /// <summary>Returns the set with only designs of so many orbits under the symmetry kept.</summary>
    /// <param name="min">Fewest, from 1.</param>
    /// <param name="max">Most, from the fewest.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fewest are under 1, or the most under the fewest.</exception>
    public DesignSet WithOrbitCount(int min, int max)
    {
        Guard.Within(min, 1, int.MaxValue);
        Guard.Within(max, min, int.MaxValue);
        return With(_limits with { MinOrbits = min, MaxOrbits = max });
    }

    /// <summary>Returns the designs that come behind one, to go on where an earlier run ended; nothing before it is made again.</summary>
    /// <remarks>Asked twice, the set begins behind whichever of the two designs comes later.</remarks>
    /// <param name="id">Id of a design that keeps this set's symmetry.</param>
    /// <exception cref="ArgumentException">No design that keeps the symmetry has this id.</exception>
    public DesignSet After(string id)
    {
        var mask = MaskOf(id);
        return _after is { } after && DesignBoard.IsLater(after, mask)
            ? this
            : new(_board, _limits, mask);
    }

    /// <summary>Returns the design with an id, within the set's limits or not.</summary>
    /// <param name="id">Id of a design that keeps this set's symmetry.</param>
    /// <exception cref="ArgumentException">No design that keeps the symmetry has this id.</exception>
    public Design Find(string id) => new(_board, MaskOf(id));

    /// <summary>Goes through the designs, from the first one anew each time.</summary>
    public IEnumerator<Design> GetEnumerator()
    {
        var walk = new DesignWalk(_board, _limits);
        if (_after is { } after)
            walk.GoBehind(after);
        while (walk.MoveNext())
            yield return new(_board, walk.Current);
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private DesignSet With(DesignLimits limits) => new(_board, limits, _after);

    private UInt128 MaskOf(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        var parts = DesignId.Parse(_board.Figure, id);
        return (parts is null ? null : _board.MaskOf(parts))
            ?? throw new ArgumentException(
                $"No design of this figure that keeps {Keep} has the id \"{id}\"; an id belongs to one figure, and to sets that keep no more symmetry than it has.",
                nameof(id)
            );
    }
}
