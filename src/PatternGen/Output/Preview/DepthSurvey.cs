using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds how deep a pattern is cut. What can't be cut is refused here, before anything is written.</summary>
internal sealed class DepthSurvey(Cutter cutter) : SelectiveSink
{
    private double _deepest;

    /// <summary>Returns the depth in mm of the deepest chip or groove; 0 if nothing is cut.</summary>
    internal static double Of(Pattern pattern, Cutter cutter)
    {
        var survey = new DepthSurvey(cutter);
        pattern.Root.Draw(survey, LayerSet.Chips | LayerSet.LineCuts);
        return survey._deepest;
    }

    public override void Chip(in PlacedChip chip) =>
        _deepest = Math.Max(_deepest, ChipSolids.Of(chip, cutter).Depth);

    public override void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile) =>
        _deepest = Math.Max(_deepest, cutter.DepthFor(width / 2));
}
