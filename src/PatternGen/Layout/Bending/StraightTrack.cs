using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band runs along the x axis.</summary>
internal sealed class StraightTrack : BandTrack
{
    internal static StraightTrack Instance { get; } = new();

    internal override bool IsClosed => false;

    internal override Chain Along(double from, double to, double y) =>
        Chain.Line(new(from, y), new(to, y));

    internal override Chain Across(double x, double height) =>
        Chain.Line(new(x, 0), new(x, height));

    internal override Transform Place(double x, double y) => Transform.Move(x, y);

    internal override PatternNode Repeat(ChipShape chip, Stations stations, int first, int count) =>
        new RepeatNode(MotifNode.Of(chip), stations, first, count);
}
