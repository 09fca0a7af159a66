namespace PatternGen;

/// <summary>What a length asks of a pitch: how many repeats may fill it, how long each may be.</summary>
/// <param name="Length">Length to fill, in mm.</param>
/// <param name="Nominal">The pitch aimed at, in mm.</param>
/// <param name="Min">Shortest pitch, in mm.</param>
/// <param name="Max">Longest pitch, in mm.</param>
/// <param name="Parity">Which numbers of repeats are allowed.</param>
/// <param name="Extra">Half a repeat when staggered rows are shifted, else 0.</param>
internal sealed record PitchQuestion(
    double Length,
    double Nominal,
    double Min,
    double Max,
    RepeatParity Parity,
    double Extra
)
{
    /// <summary>More repeats than any wood holds; more could be neither drawn nor carved.</summary>
    internal const int MaxRepeats = 10_000_000;

    /// <summary>A count this near to a whole number, relative to it, is that number: lengths that fit exactly must not miss by rounding.</summary>
    private const double WholeWithin = 1e-12;

    internal double PitchFor(int repeats) => Length / (repeats + Extra);

    /// <summary>Numbers of repeats that keep the pitch within its limits; empty if the first is over the last.</summary>
    internal (int First, int Last) Counts()
    {
        var first = Math.Ceiling((Length / Max - Extra) * (1 - WholeWithin));
        var last = Math.Floor((Length / Min - Extra) * (1 + WholeWithin));
        return (UpToParity((int)Math.Max(1, first)), DownToParity((int)last));
    }

    /// <summary>The most repeats of a given pitch that the length holds; 0 if it holds none.</summary>
    internal int CountAt(double pitch) =>
        Math.Max(0, DownToParity((int)Math.Floor((Length / pitch - Extra) * (1 + WholeWithin))));

    /// <summary>The allowed number of repeats whose pitch is nearest to the nominal one; the smaller of two as near. Null if there is none.</summary>
    internal int? Nearest()
    {
        var (first, last) = Counts();
        if (first > last)
            return null;
        var ideal = (int)Math.Clamp(Length / Nominal - Extra, first, last);
        var below = Math.Max(first, DownToParity(ideal));
        var above = Math.Min(last, below + (Parity == RepeatParity.Any ? 1 : 2));
        return Math.Abs(PitchFor(below) - Nominal) <= Math.Abs(PitchFor(above) - Nominal)
            ? below
            : above;
    }

    internal int UpToParity(int count) => Allows(count) ? count : count + 1;

    internal int DownToParity(int count) => Allows(count) ? count : count - 1;

    private bool Allows(int count) =>
        Parity switch
        {
            RepeatParity.Odd => count % 2 != 0,
            RepeatParity.Even => count % 2 == 0,
            _ => true,
        };
}
