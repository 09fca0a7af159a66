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

    /// <summary>Heights beside a large figure that are tried for a number; more would find hardly shorter ways.</summary>
    private const double MostHeights = 60;

    /// <summary>The ring round the end of a line to a number: larger where there is room, but in its part.</summary>
    private const double LargestRing = 0.4;

    private readonly List<Chain> _lines = [];
    private readonly List<Label> _labels = [];

    /// <summary>Heights of the middles of the numbers that stand beside the figure.</summary>
    private readonly List<double> _taken = [];

    /// <param name="drawing">The drawing.</param>
    /// <param name="orbits">Its parts by orbit; the first has the number 1.</param>
    internal KeyDrawing(CompassDrawing drawing, IReadOnlyList<IReadOnlyList<DrawingPart>> orbits)
    {
        _lines.AddRange(drawing.Curves.Select(curve => Chain.Of(curve.Segments)));
        var small = new List<(string Number, IReadOnlyList<DrawingPart> Parts)>();
        for (var i = 0; i < orbits.Count; i++)
        {
            var (number, parts) = ((i + 1).ToString(CultureInfo.InvariantCulture), orbits[i]);
            if (parts[0].IsPlain)
                continue;
            var height = HeightIn(parts[0], number);
            if (height >= Lowest)
                _labels.AddRange(parts.Select(part => Centred(part, number, height)));
            else
                small.Add((number, parts));
        }
        foreach (var (number, parts) in small)
            SetBeside(drawing.Extents, number, parts);
    }

    internal IReadOnlyList<Chain> Lines => _lines;

    internal IReadOnlyList<Label> Labels => _labels;

    /// <summary>As high as fits in the circle that fits in the part.</summary>
    private static double HeightIn(DrawingPart part, string number)
    {
        var width = Lettering.Width(number, 1);
        return Math.Min(Highest, 2 * part.Clearance / double.Hypot(width, 1));
    }

    private static Label Centred(DrawingPart part, string number, double height)
    {
        var width = Lettering.Width(number, height);
        return new(number, part.InsidePoint - new Vector(width / 2, height / 2), height);
    }

    /// <summary>
    /// Sets the number of an orbit in the column to the right of the figure, with a line to one of its parts: which part and
    /// how high, so that the line crosses the fewest numbers, and of such ways the shortest.
    /// </summary>
    private void SetBeside(Extents figure, string number, IReadOnlyList<DrawingPart> orbit)
    {
        var left = figure.Max.X + Away * Beside;
        var ways =
            from part in orbit
            from middle in FreeHeights(figure)
            select (part, way: new Segment(part.InsidePoint, new(left - Beside / 2, middle)));
        var (best, line) = ways.OrderBy(way => NumbersCrossed(way.way))
            .ThenBy(way => way.way.Length)
            .First();
        _taken.Add(line.End.Y);
        _labels.Add(new(number, new(left, line.End.Y - Beside / 2), Beside));
        AddLine(best, line.End);
    }

    /// <summary>Heights for numbers beside the figure, and on beyond it if there are many, apart from those that are taken.</summary>
    private IEnumerable<double> FreeHeights(Extents figure)
    {
        var step = Math.Max(Beside, figure.Height / MostHeights);
        var count = Math.Ceiling(figure.Height / step) + 2 * Spacing * _taken.Count + 1;
        for (var i = 0; i < count; i++)
        {
            var height = figure.Min.Y + i * step;
            if (_taken.TrueForAll(other => Math.Abs(other - height) >= Spacing * Beside))
                yield return height;
        }
    }

    private int NumbersCrossed(Segment way) =>
        _labels.Count(label =>
        {
            var half = new Vector(Lettering.Width(label.Text, label.Height), label.Height) / 2;
            return way.DistanceTo(label.At + half) <= half.Length;
        });

    private void AddLine(DrawingPart part, Point to)
    {
        var ring = new Circle(part.InsidePoint, Math.Min(LargestRing, part.Clearance / 2));
        _lines.Add(Chain.Of(ring.ToContour().Segments));
        var towards = (to - ring.Centre).Unit();
        _lines.Add(Chain.Line(ring.Centre + towards * ring.Radius, to));
    }
}
