using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws a rosette, and those in and round it, with one pencil round one centre.</summary>
internal sealed partial class RosetteDrafting
{
    /// <summary>Places on a petal's middle line nearer to each other than this share of it have no face between them.</summary>
    private const double NoRoom = 1e-3;

    private readonly List<DrawnCurve> _rings = [];
    private bool _hasRim;

    internal RosetteDrafting(Pencil pencil)
    {
        Pencil = pencil;
        Centre = pencil.Mark(0, 0);
    }

    internal Pencil Pencil { get; }

    internal MarkedPoint Centre { get; }

    /// <summary>Radius of the rosette in mm that will be drawn in the plain centre of this one; 0 if none.</summary>
    internal double Filled { get; set; }

    /// <summary>Draws the rim. The outermost one counts as the edge of the work.</summary>
    internal DrawnCurve Rim(double radius, PencilLine line = PencilLine.Drawn)
    {
        var rim = Ring(radius, line);
        if (!_hasRim)
            Pencil.WorkWithin(rim);
        _hasRim = true;
        return rim;
    }

    /// <summary>Draws the rim and divides it, from the top.</summary>
    internal MarkedPoint[] DivideRim(double radius, int count) =>
        [.. Pencil.DivideCircle(Rim(radius), count)];

    /// <summary>Draws a circle round the centre. What a rosette round this one has drawn is not drawn again.</summary>
    internal DrawnCurve Ring(double radius, PencilLine line = PencilLine.Drawn)
    {
        var tolerance = Tolerance.ForExtent(2 * radius);
        var known = _rings.Find(ring =>
            ring.Line == line && Math.Abs(ring.Curve.Circle.Radius - radius) <= tolerance.Merge
        );
        if (known is not null)
            return known;
        Pencil.SetRadius(radius);
        var drawn = Pencil.Circle(Centre, line);
        _rings.Add(drawn);
        return drawn;
    }

    /// <summary>Draws the circle round the plain centre, if there is one.</summary>
    /// <param name="diameter">Its diameter in mm, or 0.</param>
    internal DrawnCurve? Disc(double diameter)
    {
        if (diameter == 0)
            return null;
        var radius = diameter / 2;
        MarkPlain(radius);
        return Ring(radius);
    }

    /// <summary>Divides a circle in twice as many parts as a round has.</summary>
    /// <returns>The points of the round, and those half-way on to the next.</returns>
    internal (MarkedPoint[] Whole, MarkedPoint[] Half) DivideTwice(DrawnCurve circle, int count)
    {
        var points = Pencil.DivideCircle(circle, 2 * count);
        return ([.. points.Where((_, i) => i % 2 == 0)], [.. points.Where((_, i) => i % 2 == 1)]);
    }

    /// <summary>Draws faint lines from the centre towards points, up to a circle, and marks their ends.</summary>
    internal MarkedPoint[] OnRing(DrawnCurve ring, IEnumerable<MarkedPoint> towards) =>
        [.. Pencil.Extend([Centre], towards, ring, PencilLine.Guide).Select(spoke => spoke.Point)];

    /// <summary>Marks the outermost face on the way from the centre to each tip as a petal; to be called last.</summary>
    internal void MarkPetals(IEnumerable<MarkedPoint> tips)
    {
        foreach (var tip in tips)
            MarkPetalBefore(tip.Point);
    }

    /// <summary>Marks the last face before a circle as a petal, half-way between each two neighbours of a round.</summary>
    internal void MarkPetalsBetween(IReadOnlyList<MarkedPoint> round, double radius)
    {
        foreach (var point in round)
            MarkPetalBefore(
                Centre.Point.Polar(
                    radius,
                    (point.Point - Centre.Point).Direction + Angle.OfTurn(0.5 / round.Count)
                )
            );
    }

    /// <summary>Marks the last face on the straight way from the centre to a place as a petal.</summary>
    internal void MarkPetalBefore(Point to)
    {
        var from = Centre.Point;
        var line = new Segment(from, to);
        var length = from.DistanceTo(to);
        var tolerance = Tolerance.ForExtent(2 * length);
        double[] places =
        [
            .. Pencil
                .Drawing.Steps.SelectMany(step => step.Drawn)
                .Where(curve => curve.Line == PencilLine.Drawn)
                .SelectMany(curve => CurveCrossings.Between(line, curve.Curve, tolerance))
                .Select(from.DistanceTo)
                .Append(0)
                .Append(length)
                .Order(),
        ];
        var last = Array.FindLastIndex(places, place => length - place > NoRoom * length);
        Pencil.MarkPetal(from.Towards(to, (places[last] + places[last + 1]) / (2 * length)));
    }

    /// <summary>Marks what stays plain in the middle: the disc, or what a rosette drawn in it leaves of it.</summary>
    /// <param name="radius">Radius of the disc in mm.</param>
    /// <param name="towards">A direction in which it stays plain, up by default; of a fan's disc that is its middle.</param>
    internal void MarkPlain(double radius, Angle? towards = null)
    {
        var nearly = radius * (1 - NoRoom);
        if (Filled >= nearly)
            return;
        var isWhole = Filled == 0 && towards is null;
        Pencil.MarkPlain(
            isWhole
                ? Centre.Point
                : Centre.Point.Polar((Filled + radius) / 2, towards ?? Angle.FromDegrees(90))
        );
    }
}
