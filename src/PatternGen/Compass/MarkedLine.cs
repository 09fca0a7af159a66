namespace PatternGen;

/// <summary>A straight line that a step drew, and the point that it found by it.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class MarkedLine
{
    internal MarkedLine(DrawnCurve line, MarkedPoint point)
    {
        Line = line;
        Point = point;
    }

    /// <summary>The line.</summary>
    public DrawnCurve Line { get; }

    /// <summary>The point on it.</summary>
    public MarkedPoint Point { get; }
}
