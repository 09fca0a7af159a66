namespace PatternGen;

/// <summary>A line or arc between two numbered points.</summary>
/// <param name="From">Number of the point where it starts.</param>
/// <param name="To">Number of the point where it ends.</param>
/// <param name="Bulge">tan(sweep / 4) on the way from start to end; 0 is a line.</param>
/// <param name="Times">How often it is drawn.</param>
internal readonly record struct Side(int From, int To, double Bulge, int Times);
