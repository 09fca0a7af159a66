using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Names directions on the drawing.</summary>
internal static class SideFacings
{
    /// <summary>What arithmetic leaves, in eighths of a turn, decides nothing.</summary>
    private const double Noise = 1e-9;

    /// <summary>The nearest of the eight; half-way between two, the one that comes next counter-clockwise.</summary>
    internal static SideFacing Of(Vector direction)
    {
        var eighths = direction.Direction.Degrees / 45;
        var nearest = (int)Math.Floor(eighths + 0.5 + Noise);
        return (SideFacing)((nearest + 8) % 8);
    }
}
