using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How fast somebody carves, as they say or as a timed sample shows.</summary>
/// <remarks>
/// There is no default: it depends on hand, wood and edge. <c>CarvingRate.Strokes(perMinute: 6)</c> makes 30 minutes of 60
/// triangles of three cuts. Immutable and safe to share between threads.
/// </remarks>
public sealed class CarvingRate
{
    private readonly double _perChip;
    private readonly double _perStroke;
    private readonly double _perMillimetre;
    private readonly double _perTurn;

    private CarvingRate(double perChip, double perStroke, double perMillimetre, double perTurn = 0)
    {
        (_perChip, _perStroke) = (perChip, perStroke);
        (_perMillimetre, _perTurn) = (perMillimetre, perTurn);
    }

    /// <summary>Returns a rate in cuts.</summary>
    /// <param name="perMinute">Cuts, stabs and slices a minute, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not positive.</exception>
    public static CarvingRate Strokes(double perMinute) => new(0, 1 / Guard.Positive(perMinute), 0);

    /// <summary>Returns a rate in length.</summary>
    /// <param name="perMinute">Millimetres of cut a minute, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not positive.</exception>
    public static CarvingRate Millimetres(double perMinute) =>
        new(0, 0, 1 / Guard.Positive(perMinute));

    /// <summary>Returns the rate of a timed sample whose chips were like those to be carved.</summary>
    /// <param name="chips">How many chips were carved, 1 or more.</param>
    /// <param name="minutes">In how many minutes, more than 0. 12 chips in 18 minutes are 1.5 minutes a chip.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static CarvingRate Sample(int chips, double minutes) =>
        new(Guard.Positive(minutes) / Guard.Within(chips, 1, int.MaxValue), 0, 0);

    /// <summary>Returns the rate of a timed sample by its cuts, so that it serves for chips with more or fewer sides.</summary>
    /// <param name="carved">The plan of what was carved, such as a practice board.</param>
    /// <param name="minutes">In how many minutes, more than 0.</param>
    /// <exception cref="ArgumentException">The plan has no cuts.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is not positive.</exception>
    public static CarvingRate Sample(CarvingPlan carved, double minutes)
    {
        Guard.Positive(minutes);
        if (Guard.NotNull(carved).Strokes.Count is var strokes && strokes > 0)
            return new(0, minutes / strokes, 0);
        throw new ArgumentException("A timed sample needs at least one cut.", nameof(carved));
    }

    /// <summary>Returns the rate with time for each turn of the board besides.</summary>
    /// <param name="seconds">For one turn, 0 or more; 0 if nothing is said.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    [Pure]
    public CarvingRate WithTurns(double seconds) =>
        new(_perChip, _perStroke, _perMillimetre, Guard.NotNegative(seconds) / 60);

    internal double MinutesFor(CarvingPlan plan) =>
        plan.Totals.Chips * _perChip
        + plan.Totals.Strokes * _perStroke
        + plan.Totals.Length * _perMillimetre
        + plan.BoardTurns * _perTurn;
}
