namespace PatternGen;

/// <summary>
/// The evenly spaced places along a band where its parts join: a length divided into half pitches.
/// </summary>
/// <remarks>
/// Each place comes from its index by one expression, never by adding up, so that the last one lies at the end of the
/// length and neighbours that meet at a place agree to the last digit.
/// </remarks>
/// <param name="Start">Where the first station lies, in mm.</param>
/// <param name="Length">From the first to the last station, in mm.</param>
/// <param name="Halves">Number of half pitches in the length.</param>
/// <param name="IsClosed">Whether the last station is the first again, as round a circle.</param>
internal sealed record Stations(double Start, double Length, int Halves, bool IsClosed = false)
{
    /// <summary>
    /// A place this near to a station, as a share of the half pitch, is at the station. Larger values would pull in
    /// corners that a motif means to keep off the joint; smaller ones would miss corners that went through arithmetic.
    /// </summary>
    private const double AtStation = 1e-9;

    /// <summary>
    /// Places between stations are rounded to 2^-36 mm, 1.5e-11, so that two motifs that reach the same place by
    /// different arithmetic still agree to the last digit.
    /// </summary>
    private const double Steps = 1L << 36;

    internal double HalfPitch => Length / Halves;

    /// <summary>Where a station lies; half-way between two repeats at odd indices.</summary>
    internal double At(int half) => Open(IsClosed ? Round(half) : half);

    /// <summary>Where the last station lies, round a closed line a whole length after the first.</summary>
    internal double End => Open(Halves);

    /// <summary>Returns where a place goes that lies at <paramref name="x"/> in a repeat begun at the given station.</summary>
    internal double Map(int half, double x)
    {
        var nearest = Math.Round(x / HalfPitch);
        var rest = x - nearest * HalfPitch;
        if (Math.Abs(rest) <= AtStation * HalfPitch)
            return At(half + (int)nearest);
        return At(half + (int)nearest) + Math.Round(rest * Steps) / Steps;
    }

    private double Open(int half) => Start + Length * half / Halves;

    /// <summary>The index from 0 of a station round a closed line.</summary>
    private int Round(int half) => (half % Halves + Halves) % Halves;
}
