using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What a band runs along: draws its lines and repeats there.</summary>
internal abstract class BandTrack
{
    /// <summary>Whether the band runs round without ends.</summary>
    internal abstract bool IsClosed { get; }

    /// <summary>The line at a height over the lowest rule, from one x to another.</summary>
    internal abstract Chain Along(double from, double to, double y);

    /// <summary>The line across the band at an x.</summary>
    internal abstract Chain Across(double x, double height);

    /// <summary>How a motif drawn about the origin is placed at a place on the band.</summary>
    internal abstract Transform Place(double x, double y);

    /// <summary>A chip once every whole pitch of the stations.</summary>
    internal abstract PatternNode Repeat(ChipShape chip, Stations stations, int first, int count);
}
