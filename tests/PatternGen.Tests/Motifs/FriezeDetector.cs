namespace PatternGen.Tests.Motifs;

/// <summary>
/// Finds the frieze group of a row of outlines from the outlines alone. Contents of the groups: p1 translations; p1m1 +
/// upright mirrors; p11m + mirror along; p11g + glide; p2 half turns; p2mg and p2mm their combinations ("Frieze group",
/// table of the seven groups).
/// </summary>
internal sealed class FriezeDetector
{
    private const double Same = 1e-6;

    private readonly Point[] _points;
    private readonly double _period;
    private readonly double _sumOfHeights;

    /// <param name="outlines">Chips of a band, some periods long.</param>
    /// <param name="period">The shortest shift that takes the band into itself.</param>
    internal FriezeDetector(IEnumerable<Contour> outlines, double period)
    {
        _period = period;
        var all = outlines.ToArray();
        _points = Distinct(all.SelectMany(Marks).Select(Wrapped));
        var extents = all.Select(outline => outline.Extents).Aggregate((a, b) => a.Including(b));
        _sumOfHeights = extents.Min.Y + extents.Max.Y;
    }

    /// <summary>Whether half the period would do: then the period given is not the shortest.</summary>
    internal bool RepeatsAtHalf => IsKept(p => new(p.X + _period / 2, p.Y));

    internal FriezeGroup Detect()
    {
        var upright = Axes().Any(sum => IsKept(p => new(sum - p.X, p.Y)));
        var along = IsKept(p => new(p.X, _sumOfHeights - p.Y));
        var glide = IsKept(p => new(p.X + _period / 2, _sumOfHeights - p.Y));
        var halfTurn = Axes().Any(sum => IsKept(p => new(sum - p.X, _sumOfHeights - p.Y)));
        return (upright, along, glide, halfTurn) switch
        {
            (true, true, _, true) => FriezeGroup.P2mm,
            (true, false, true, true) => FriezeGroup.P2mg,
            (true, false, false, false) => FriezeGroup.P1m1,
            (false, true, _, false) => FriezeGroup.P11m,
            (false, false, true, false) => FriezeGroup.P11g,
            (false, false, false, true) => FriezeGroup.P2,
            (false, false, false, false) => FriezeGroup.P1,
            var found => throw new InvalidOperationException($"No frieze group has {found}."),
        };
    }

    /// <summary>Every place where an upright axis or a centre of a half turn could lie: it takes the first point to some point.</summary>
    private IEnumerable<double> Axes() => _points.Select(point => _points[0].X + point.X);

    private bool IsKept(Func<Point, Point> move) =>
        _points.All(point => Contains(Wrapped(move(point))));

    private bool Contains(Point point) => _points.Any(other => IsSame(point, other));

    private bool IsSame(Point a, Point b)
    {
        var apart = Math.Abs(Math.IEEERemainder(a.X - b.X, _period));
        return apart < Same && Math.Abs(a.Y - b.Y) < Same;
    }

    private Point Wrapped(Point point) =>
        new(point.X - _period * Math.Floor(point.X / _period), point.Y);

    private Point[] Distinct(IEnumerable<Point> points)
    {
        var distinct = new List<Point>();
        foreach (var point in points)
            if (!distinct.Any(other => IsSame(point, other)))
                distinct.Add(point);
        return [.. distinct];
    }

    /// <summary>Corners, middles of sides and centres of gravity: enough to tell two outlines apart.</summary>
    private static IEnumerable<Point> Marks(Contour outline) =>
        outline
            .Segments.SelectMany(side => (Point[])[side.Start, side.Middle])
            .Append(outline.Centroid);
}
