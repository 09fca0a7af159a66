namespace PatternGen;

/// <summary>How much a design carves.</summary>
/// <param name="Chips">Number of chips.</param>
/// <param name="Share">Share of the area of all parts, from 0 to 1.</param>
internal readonly record struct CarvedSize(double Chips, double Share)
{
    public static CarvedSize operator +(CarvedSize one, CarvedSize other) =>
        new(one.Chips + other.Chips, one.Share + other.Share);
}
