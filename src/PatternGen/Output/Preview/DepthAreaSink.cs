using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes what lies deeper than a level, each chip and groove as an element of its own.</summary>
/// <param name="paths">Where to.</param>
/// <param name="cutter">What is cut with.</param>
/// <param name="levels">The areas known so far.</param>
/// <param name="level">Returns the level in mm for a chip or groove of a given depth.</param>
internal sealed class DepthAreaSink(
    SvgPathWriter paths,
    Cutter cutter,
    DepthLevels levels,
    Func<double, double> level
) : SelectiveSink
{
    public override void Chip(in PlacedChip chip)
    {
        var solid = ChipSolids.Of(chip, cutter);
        var rings = levels.Below(chip, solid, level(solid.Depth)).ToList();
        if (rings.Count == 0)
            return;
        paths.Begin();
        foreach (var ring in rings)
            paths.TryAddClosed(ring.Span);
        paths.End();
    }

    public override void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile)
    {
        var groove = Grooves.Of(path, width, profile, cutter);
        if (GrooveFacets.Below(groove, level(groove.Depth) / groove.Depth) is { } ring)
            paths.TryClosed(ring, default);
    }
}
