using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Where an open curve of an imported drawing ends, and the nearest other loose end.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class ImportGap
{
    internal ImportGap(Point from, Point to)
    {
        From = from;
        To = to;
    }

    /// <summary>A loose end.</summary>
    public Point From { get; }

    /// <summary>The nearest other loose end, which may be that of the same curve.</summary>
    public Point To { get; }

    /// <summary>How far they are apart, in mm.</summary>
    public double Width => From.DistanceTo(To);

    /// <summary>Returns width and place: <c>0.35 mm from (10, 20) to (10.35, 20)</c>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Width:0.######} mm from {From} to {To}");
}
