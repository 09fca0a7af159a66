using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds how far a drawing reaches beyond its centre lines: labels, and grooves as wide as they are cut.</summary>
internal sealed class DrawingSurvey : SelectiveSink
{
    private double _widestCut;
    private Extents? _labels;

    /// <summary>Returns the extents of the chosen layers and of all labels as they are seen; null if there is nothing.</summary>
    internal static Extents? Of(Pattern pattern, LayerSet layers)
    {
        var survey = new DrawingSurvey();
        pattern.Root.Draw(survey, LayerSet.LineCuts | LayerSet.Labels);
        var cuts = pattern.Bounds(layers & LayerSet.LineCuts)?.Grown(survey._widestCut / 2);
        return PatternNode.Union(PatternNode.Union(pattern.Bounds(layers), cuts), survey._labels);
    }

    public override void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile) =>
        _widestCut = Math.Max(_widestCut, width);

    public override void Label(Label label) => _labels = PatternNode.Union(_labels, label.Box());
}
