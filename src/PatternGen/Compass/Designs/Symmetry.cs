using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How much of a figure's symmetry its designs keep: parts that it takes to each other are carved together or not at all.</summary>
/// <remarks>Immutable and safe to share between threads. The default value is <see cref="Full"/>.</remarks>
public readonly record struct Symmetry
{
    private const int AllTurns = -1;

    // 0 is Full, so that the default value is.
    private readonly int _turns;

    private Symmetry(int turns) => _turns = turns;

    /// <summary>All turns and mirrors of the figure.</summary>
    public static Symmetry Full => default;

    /// <summary>All turns; mirrors need not be kept, so that designs may whirl.</summary>
    public static Symmetry Turns => new(AllTurns);

    /// <summary>Nothing: every part is chosen by itself. The same as <c>TurnsOf(1)</c>.</summary>
    public static Symmetry None => new(1);

    internal bool IsFull => _turns == 0;

    /// <summary>Turns by 360 degrees / m; mirrors need not be kept.</summary>
    /// <param name="m">Number of turns, from 1; it must divide the figure's <see cref="FigureSymmetry.Order"/>. <c>TurnsOf(3)</c> keeps thirds of a turn.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is less than 1 or more than 1000000.</exception>
    public static Symmetry TurnsOf(int m) => new(Guard.Within(m, 1, 1_000_000));

    /// <summary>Returns <c>Full</c>, <c>Turns</c>, <c>TurnsOf(3)</c> or <c>None</c>.</summary>
    public override string ToString() =>
        _turns switch
        {
            0 => nameof(Full),
            AllTurns => nameof(Turns),
            1 => nameof(None),
            _ => string.Create(CultureInfo.InvariantCulture, $"TurnsOf({_turns})"),
        };

    /// <summary>Number of turns that are kept of a figure's.</summary>
    /// <exception cref="PatternException">The figure does not have these turns.</exception>
    internal int TurnsIn(FigureSymmetry figure)
    {
        var order = figure.Order;
        if (_turns <= 0)
            return order;
        // Of circles round one centre every turn takes each part to itself.
        if (figure.IsRound)
            return 1;
        return order % _turns == 0
            ? _turns
            : throw new PatternException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The figure comes onto itself by {order} turns, of which {_turns} equal ones are no part."
                ),
                figure.Centre,
                [.. DivisorsOf(order).Select(m => new Symmetry(m).ToString())]
            );
    }

    /// <summary>The divisors of an order, the largest first.</summary>
    internal static IEnumerable<int> DivisorsOf(int order) =>
        Enumerable.Range(0, order).Select(i => order - i).Where(m => order % m == 0);
}
