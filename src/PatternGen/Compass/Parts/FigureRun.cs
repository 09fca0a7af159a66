using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// A line of a figure from one corner or crossing to the next. Nodes where a curve merely goes on are none: they come from
/// how the figure was drawn, and would hide its symmetry.
/// </summary>
internal sealed class FigureRun
{
    private readonly Point[] _points;

    private FigureRun(Point[] points, double length, Circle? circle, HalfEdge first)
    {
        _points = points;
        Length = length;
        Circle = circle;
        LeftFace = first.Face.Index;
        RightFace = first.Twin.Face.Index;
    }

    internal double Length { get; }

    /// <summary>The whole circle, counter-clockwise, that nothing meets; null for all other lines.</summary>
    internal Circle? Circle { get; }

    internal int LeftFace { get; }

    internal int RightFace { get; }

    internal Point Start => _points[0];

    internal Point End => _points[^1];

    /// <summary>Half-way along; of a whole circle, the centre.</summary>
    internal Point Middle => Circle is { } circle ? circle.Centre : _points[_points.Length / 2];

    internal static FigureRun Of(List<HalfEdge> way, bool isRound)
    {
        var segments = way.SelectMany(halfEdge => halfEdge.Segments).ToArray();
        if (isRound)
        {
            var circle = new Circle(segments[0].Centre, segments[0].Radius);
            // Counter-clockwise, so that the inside is always on the left.
            var first = segments[0].Bulge > 0 ? way[0] : way[0].Twin;
            return new([], circle.Length, circle, first);
        }
        var chain = Chain.Of(segments);
        var length = chain.Length;
        Point[] points =
        [
            chain.Start,
            chain.PointAt(length / 4),
            chain.PointAt(length / 2),
            chain.PointAt(length * 3 / 4),
            chain.End,
        ];
        return new(points, length, null, way[0]);
    }

    /// <summary>How far this run, taken somewhere, lies off another, with the way it then runs; infinite if it is none of its size.</summary>
    internal (double Off, bool Reversed) Against(FigureRun other, Transform taken)
    {
        if ((Circle is null) != (other.Circle is null))
            return (double.PositiveInfinity, false);
        var longer = Math.Abs(Length - other.Length);
        if (Circle is not null)
            return (
                Math.Max(longer, taken.Apply(Middle).DistanceTo(other.Middle)),
                taken.IsMirrored
            );
        double along = longer;
        double back = longer;
        for (var i = 0; i < _points.Length; i++)
        {
            var at = taken.Apply(_points[i]);
            along = Math.Max(along, at.DistanceTo(other._points[i]));
            back = Math.Max(back, at.DistanceTo(other._points[^(i + 1)]));
        }
        return (Math.Min(along, back), back < along);
    }
}
