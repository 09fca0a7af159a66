using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band is bent along a line.</summary>
/// <param name="line">The line.</param>
/// <param name="bender">Bends the chips.</param>
internal sealed class BentTrack(BendLine line, ChipBender bender) : BandTrack
{
    internal override bool IsClosed => line.IsClosed;

    internal override Chain Along(double from, double to, double y) => line.Along(from, to, y);

    internal override Chain Across(double x, double height) => line.Across(x, 0, height);

    internal override Transform Place(double x, double y) =>
        Transform.Move(0, y).Then(line.Frame(x));

    /// <remarks>Neighbours that look alike share a shape, and those that follow each other a node.</remarks>
    internal override PatternNode Repeat(ChipShape chip, Stations stations, int first, int count)
    {
        var nodes = new List<PatternNode>();
        BentChip? open = null;
        var since = 0;
        for (var i = 0; i < count; i++)
        {
            var bent = bender.Bend(chip, new(line, stations, first + 2 * i));
            if (ReferenceEquals(bent, open))
                continue;
            Close(i);
            (open, since) = (bent, i);
        }
        Close(count);
        return GroupNode.InSameRows(nodes);

        void Close(int end)
        {
            if (open is not null)
                nodes.Add(new BentRepeatNode(open, line, stations, first + 2 * since, end - since));
        }
    }
}
