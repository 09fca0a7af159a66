using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The grain in a cut through wood: long lines where the cut runs along it, arcs of the years where it runs across.</summary>
internal static class SectionGrain
{
    /// <summary>Distance in mm from year to year.</summary>
    private const double Years = 1.3;

    /// <summary>Radius in mm of the smallest arc under a board: flat-sawn, from well out of the heart.</summary>
    private const double Heart = 40;

    /// <summary>Lines at most; thicker boards have wider years.</summary>
    private const int MostLines = 60;

    /// <param name="room">The cut: from start to end, and from bottom to surface.</param>
    /// <param name="direction">Where it runs.</param>
    /// <param name="grain">Where the grain runs.</param>
    internal static IEnumerable<Chain> Lines(Extents room, Vector direction, Vector grain)
    {
        var years = Math.Max(Years, room.Height / MostLines);
        // Nearer to the grain than to across it.
        if (Math.Abs(direction.Dot(grain)) > Math.Sqrt(0.5))
        {
            foreach (var (line, _) in WoodGrain.Lines(room, Angle.Zero, years))
                yield return line;
            yield break;
        }
        var half = room.Width / 2;
        var centre = new Point(room.Centre.X, room.Min.Y - Heart - half / 2);
        for (var radius = room.Min.Y - centre.Y + years / 2; radius < Reach(); radius += years)
        {
            // Only as far as the cut is wide; a smaller arc ends at its bottom.
            var sine = Math.Min(1, 1.05 * half / radius);
            var from = Math.PI / 2 + Math.Asin(sine);
            var arc = Segment.Arc(
                centre,
                radius,
                Angle.FromRadians(from),
                Angle.FromRadians(-2 * Math.Asin(sine))
            );
            yield return Chain.Of(arc);
        }

        double Reach() => double.Hypot(half, room.Max.Y - centre.Y);
    }
}
