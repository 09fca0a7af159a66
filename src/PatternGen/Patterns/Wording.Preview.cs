namespace PatternGen;

public partial class Wording
{
    /// <summary>What a picture of the carved surface is called: <c>Rail 742.5 × 36 mm, as carved</c>.</summary>
    /// <param name="title">What the pattern is.</param>
    public virtual string AsCarved(string title) => $"{title}, as carved";

    /// <summary>How deep the deepest cut is: <c>deepest cut 2.74 mm</c>.</summary>
    /// <param name="depth">Depth in mm.</param>
    public virtual string DeepestCut(double depth) => $"deepest cut {Millimetres(depth)}";

    /// <summary>What the walls of chips are called for readers of a picture.</summary>
    public virtual string CarvedWalls => "Walls in the light";

    /// <summary>Said over a scale of depth colours.</summary>
    public virtual string DepthInMillimetres => "Depth in mm";

    /// <summary>What a scale of depth colours is called for readers: <c>Depth from 0 to 2.74 mm</c>.</summary>
    /// <param name="deepest">Depth at its end, in mm.</param>
    public virtual string DepthScale(double deepest) => $"Depth from 0 to {Millimetres(deepest)}";

    /// <summary>What an area of one depth colour is called for readers: <c>Depth 0.5 to 1 mm</c>.</summary>
    /// <param name="from">Where it begins, in mm.</param>
    /// <param name="to">Where it ends, in mm.</param>
    public virtual string DepthBand(double from, double to) =>
        $"Depth {Number(from, 2)} to {Millimetres(to)}";

    /// <summary>What a line of equal depth is called for readers: <c>Depth 0.5 mm</c>.</summary>
    /// <param name="depth">Depth in mm.</param>
    public virtual string DepthLine(double depth) => $"Depth {Millimetres(depth)}";
}
