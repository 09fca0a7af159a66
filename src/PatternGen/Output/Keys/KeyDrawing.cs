using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Lays out the numbers of a key: in the parts, or beside the figure where these are too small.</summary>
internal sealed class KeyDrawing
{
    private const double Highest = 4;

    /// <summary>The lowest that is read at arm's length; lower numbers are set beside the figure.</summary>
    private const double Lowest = 1.6;

    /// <summary>Height of the numbers beside the figure, and in shares of it their distance from the figure and from line to line.</summary>
    private const double Beside = 2.5;
    private const double Away = 2;
    private const double Spacing = 1.8;

    /// <summary>The ring round the end of a line to a number: larger where there is room, but in its part.</summary>
    private const double LargestRing = 0.4;

    private readonly List<Chain> _lines = [];
    private readonly List<Label> _labels = [];

    internal KeyDrawing(CompassDrawing drawing)
    {
        _lines.AddRange(drawing.Curves.Select(ChainOf));
        var small = new List<IReadOnlyList<DrawingPart>>();
        foreach (var orbit in Enumerable.Range(1, drawing.OrbitCount).Select(drawing.OrbitParts))
        {
            if (orbit[0].IsPlain)
                continue;
            var height = HeightIn(orbit[0]);
            if (height >= Lowest)
                _labels.AddRange(orbit.Select(part => Centred(part, height)));
            else
                small.Add(orbit);
        }
        SetBeside(drawing.Extents, [.. small.Select(EasiestToReach)]);
    }

    internal IReadOnlyList<Chain> Lines => _lines;

    internal IReadOnlyList<Label> Labels => _labels;

    private static Chain ChainOf(Curve curve) =>
        Chain.Of(curve.IsCircle ? curve.Circle.ToContour().Segments : [curve.Segment]);

    private static string Number(DrawingPart part) =>
        part.Orbit.ToString(CultureInfo.InvariantCulture);

    /// <summary>As high as fits in the circle that fits in the part.</summary>
    private static double HeightIn(DrawingPart part)
    {
        var width = Lettering.Width(Number(part), 1);
        return Math.Min(Highest, 2 * part.Clearance / double.Hypot(width, 1));
    }

    private static Label Centred(DrawingPart part, double height)
    {
        var width = Lettering.Width(Number(part), height);
        return new(Number(part), part.InsidePoint - new Vector(width / 2, height / 2), height);
    }

    /// <summary>The part whose level way to the right crosses the fewest numbers; of several, the one farthest to the right.</summary>
    private DrawingPart EasiestToReach(IReadOnlyList<DrawingPart> orbit) =>
        orbit
            .OrderBy(part => _labels.Count(label => IsInTheWay(label.Box(), part.InsidePoint)))
            .ThenByDescending(part => part.InsidePoint.X)
            .First();

    private static bool IsInTheWay(Extents box, Point from) =>
        box.Max.X > from.X && box.Min.Y <= from.Y && from.Y <= box.Max.Y;

    /// <summary>In a column to the right of the figure, each at the height of its part or as near above it as there is room.</summary>
    private void SetBeside(Extents figure, IEnumerable<DrawingPart> parts)
    {
        var left = figure.Max.X + Away * Beside;
        var lowest = double.NegativeInfinity;
        foreach (var part in parts.OrderBy(part => part.InsidePoint.Y))
        {
            var middle = Math.Max(lowest, part.InsidePoint.Y);
            lowest = middle + Spacing * Beside;
            _labels.Add(new(Number(part), new(left, middle - Beside / 2), Beside));
            AddLine(part, new(left - Beside / 2, middle));
        }
    }

    private void AddLine(DrawingPart part, Point to)
    {
        var ring = new Circle(part.InsidePoint, Math.Min(LargestRing, part.Clearance / 2));
        _lines.Add(ChainOf(ring));
        var towards = (to - ring.Centre).Unit();
        _lines.Add(Chain.Line(ring.Centre + towards * ring.Radius, to));
    }
}
