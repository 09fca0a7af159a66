using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Line cuts on their way through a tree, as solids.</summary>
internal static class Grooves
{
    internal static Groove Of(
        ReadOnlySpan<Vertex> path,
        double width,
        GrooveProfile profile,
        Cutter cutter
    ) => PatternGen.LineCut.Placed(new Chain(path.ToArray()), width, profile).CutWith(cutter);
}
