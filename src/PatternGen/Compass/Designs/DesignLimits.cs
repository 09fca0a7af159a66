namespace PatternGen;

/// <summary>Which designs of a set are wanted.</summary>
/// <remarks>Sums of areas are compared with a little slack, far below any share that a person would set.</remarks>
internal sealed record DesignLimits
{
    private const double Slack = 1e-12;

    internal int MinOrbits { get; init; } = 1;

    internal int MaxOrbits { get; init; } = int.MaxValue;

    internal int MinChips { get; init; } = 1;

    internal int MaxChips { get; init; } = int.MaxValue;

    internal double MinShare { get; init; }

    internal double MaxShare { get; init; } = 1;

    internal bool UpToReversal { get; init; }

    /// <summary>Whether more than the number of orbits is limited.</summary>
    internal bool LimitWhatIsCarved =>
        MinChips > 1 || MaxChips < int.MaxValue || MinShare > 0 || MaxShare < 1;

    internal bool AdmitOrbits(int count) => count >= MinOrbits && count <= MaxOrbits;

    /// <summary>Whether a design that becomes at least this large may be wanted.</summary>
    internal bool Admit(CarvedSize least) =>
        least.Chips <= MaxChips && least.Share <= MaxShare + Slack;

    /// <summary>Whether a design that becomes at most this large may be wanted.</summary>
    internal bool Reach(CarvedSize most) =>
        most.Chips >= MinChips && most.Share >= MinShare - Slack;

    /// <summary>
    /// Whether designs between two sizes, as far as they are within these limits themselves, all have reverses that are.
    /// </summary>
    internal bool AdmitReverses(CarvedSize least, CarvedSize most, CarvedSize everything)
    {
        var largest = new CarvedSize(
            everything.Chips - Math.Max(least.Chips, MinChips),
            everything.Share - Math.Max(least.Share, MinShare)
        );
        var smallest = new CarvedSize(
            everything.Chips - Math.Min(most.Chips, MaxChips),
            everything.Share - Math.Min(most.Share, MaxShare)
        );
        return Admit(largest) && Reach(smallest);
    }
}
