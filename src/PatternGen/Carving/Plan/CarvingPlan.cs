using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>In which order, and with which cuts, the chips of a pattern are carved.</summary>
/// <remarks>
/// <para>
/// <see cref="CarvingOrder.ByChip"/>, the default, takes the largest chips first, and those of one size as a page is read.
/// Of a chip it first cuts, lightly, the sides next to chips that are out already, and last the side along which the knife runs best
/// with the grain. <see cref="CarvingOrder.ByPasses"/> takes all cuts that run one way before the board is
/// turned; only chips with a larger neighbour wait until that is out. Each chip, cut and step says which rule decided.
/// </para>
/// <para>
/// The order is common practice, no source, and no guarantee: test on scrap. Keep the knife sharp, anchor the thumb of
/// the knife hand, keep the other hand out of the blade's path. Immutable and safe to share between threads; worked out
/// when first asked for.
/// </para>
/// </remarks>
public sealed class CarvingPlan
{
    private readonly PlanSource _source;
    private readonly Lazy<PlanBench> _bench;
    private readonly Lazy<PlanContent> _content;
    private readonly Lazy<int> _turnsByChip;

    internal CarvingPlan(PlanSource source, CarvingOrder order, Technique technique, Hand hand)
        : this(source, order, technique, hand, new(() => new(source, technique, hand))) { }

    private CarvingPlan(
        PlanSource source,
        CarvingOrder order,
        Technique technique,
        Hand hand,
        Lazy<PlanBench> bench
    )
    {
        _source = source;
        (Order, Technique, Hand) = (order, technique, hand);
        _bench = bench;
        _content = new(() => new(bench.Value, Outcome(order), order));
        _turnsByChip = new(() =>
            order == CarvingOrder.ByChip ? BoardTurns : Outcome(CarvingOrder.ByChip).CountTurns()
        );
    }

    /// <summary>What is carved.</summary>
    public Pattern Pattern => _source.Pattern;

    /// <summary>The knife.</summary>
    public Knife Knife => _source.Knife;

    /// <summary>The wood.</summary>
    public Stock Stock => _source.Stock;

    /// <summary>In which order. Default <see cref="CarvingOrder.ByChip"/>.</summary>
    public CarvingOrder Order { get; }

    /// <summary>With which cuts. Default <see cref="Technique.ThreeCuts"/>; stab-cut chips are stabbed and sliced all the same.</summary>
    public Technique Technique { get; }

    /// <summary>The hand that holds the knife. Default <see cref="Hand.Right"/>.</summary>
    public Hand Hand { get; }

    /// <summary>The chips in the order in which they come out.</summary>
    public IReadOnlyList<PlannedChip> Chips => _content.Value.Chips;

    /// <summary>All cuts, in order.</summary>
    public IReadOnlyList<CarvingStroke> Strokes => _content.Value.Strokes;

    /// <summary>The lines of the schedule, in order.</summary>
    public IReadOnlyList<PlanStep> Steps => _content.Value.Steps;

    /// <summary>What the plan adds up to.</summary>
    public PlanTotals Totals => _content.Value.Totals;

    /// <summary>How often the board is turned between two cuts; laying it for the first is not counted.</summary>
    public int BoardTurns => _content.Value.Turns;

    /// <summary>How many turns of the board fewer than chip by chip; 0 for that order.</summary>
    public int BoardTurnsSaved => _turnsByChip.Value - BoardTurns;

    /// <summary>Returns the plan chip by chip.</summary>
    [Pure]
    public CarvingPlan ByChip() => InOrder(CarvingOrder.ByChip);

    /// <summary>Returns the plan in passes: all cuts that run one way, then the board is turned.</summary>
    [Pure]
    public CarvingPlan ByPasses() => InOrder(CarvingOrder.ByPasses);

    /// <summary>Returns the plan with other cuts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public CarvingPlan With(Technique technique) =>
        new(_source, Order, Guard.Defined(technique), Hand);

    /// <summary>Returns the plan for a hand.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public CarvingPlan With(Hand hand) => new(_source, Order, Technique, Guard.Defined(hand));

    /// <summary>Returns how long it takes, in minutes, at a rate that somebody gives.</summary>
    public double MinutesAt(CarvingRate rate) => Guard.NotNull(rate).MinutesFor(this);

    /// <summary>Returns chips, cuts and turns, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant(
            $"{Order}: {Totals.Chips} chips, {Totals.Strokes} cuts, {BoardTurns} turns of the board"
        );

    private CarvingPlan InOrder(CarvingOrder order) =>
        order == Order ? this : new(_source, order, Technique, Hand, _bench);

    private PlanOutcome Outcome(CarvingOrder order) =>
        order == CarvingOrder.ByChip
            ? new ChipByChip(_bench.Value).Make()
            : new PassByPass(_bench.Value).Make();
}
