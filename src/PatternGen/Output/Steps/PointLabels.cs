using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds room for the letters and numbers beside points, away from the middle of the figure, none over another.</summary>
internal sealed class PointLabels(Extents frame, Point centre)
{
    private const double Height = 2.1;

    /// <summary>From a point to the middle of its label, in mm.</summary>
    private const double Away = 2.6;

    /// <summary>Where else a label may stand, in degrees from its first choice.</summary>
    private static readonly double[] Turns = [0, 35, -35, 70, -70, 110, -110, 150, -150];

    private readonly List<Extents> _taken = [];

    /// <summary>The label where there is room for it; null if there is none, as in a round of many points.</summary>
    internal Label? Place(string text, Point point)
    {
        var outward = point - centre;
        var first = outward.Length > Away ? outward.Unit() : new Vector(0.6, -0.8);
        foreach (var turn in Turns)
        {
            var middle =
                point
                + Transform.Rotate(turn).Apply(first) * (Away + Lettering.Width(text, Height) / 4);
            var at = middle - new Vector(Lettering.Width(text, Height) / 2, Height / 2);
            var room = new Extents(at, at + new Vector(Lettering.Width(text, Height), Height));
            if (!frame.Contains(room) || _taken.Exists(room.Touches))
                continue;
            _taken.Add(room);
            return new(text, at, Height);
        }
        return null;
    }
}
