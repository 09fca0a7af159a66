using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds how far a drawing reaches beyond its centre lines: labels, and grooves as wide as they are cut.</summary>
internal sealed class DrawingSurvey : SelectiveSink
{
    private double _widestCut;
    private Extents _reach;

    private DrawingSurvey(Extents centreLines) => _reach = centreLines;

    /// <summary>Returns the extents of all that is seen, without the width of outlines.</summary>
    /// <param name="pattern">Something that is drawn, not empty.</param>
    internal static Extents Of(Pattern pattern)
    {
        var survey = new DrawingSurvey(pattern.Extents ?? default);
        pattern.Root.Draw(survey, LayerSet.LineCuts | LayerSet.Labels);
        return pattern.Bounds(LayerSet.LineCuts) is { } cuts
            ? survey._reach.Including(cuts.Grown(survey._widestCut / 2))
            : survey._reach;
    }

    public override void LineCut(ReadOnlySpan<Vertex> path, double width) =>
        _widestCut = Math.Max(_widestCut, width);

    public override void Label(Label label) => _reach = _reach.Including(label.Box());
}
