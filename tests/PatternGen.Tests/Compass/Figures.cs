namespace PatternGen.Tests.Compass;

/// <summary>Figures that tests share, as compass drawings, round the origin and in mm.</summary>
internal static class Figures
{
    /// <summary>A figure of any curves, drawn in the order given.</summary>
    internal static CompassDrawing Of(IEnumerable<Curve> curves, params Point[] plain) =>
        CompassDrawing.Of(pencil =>
        {
            foreach (var curve in curves)
                Draw(pencil, curve);
            foreach (var point in plain)
                pencil.MarkPlain(point);
        });

    /// <summary>A circle and n of the same size round points of it, each through its centre.</summary>
    internal static Curve[] Petals(int n, double radius = 40) =>
        [
            new Circle(Point.Origin, radius),
            .. Round(n).Select(turn => new Curve(new Circle(At(radius, turn), radius))),
        ];

    /// <summary>Two circles, and between them n lines from the inner to the outer, turned by a share of a turn on the way.</summary>
    internal static Curve[] Ring(int n, double slant = 0) =>
        [
            new Circle(Point.Origin, 20),
            new Circle(Point.Origin, 40),
            .. Round(n).Select(turn => new Curve(new Segment(At(20, turn), At(40, turn + slant)))),
        ];

    /// <summary>A ring of n cells whose middle stays ground.</summary>
    internal static CompassDrawing RingOfCells(int n, double slant = 0) =>
        Of(Ring(n, slant), Point.Origin);

    /// <summary>A regular polygon with all its diagonals.</summary>
    internal static Curve[] Diagonals(int n) =>
        [
            .. from i in Enumerable.Range(0, n)
            from j in Enumerable.Range(0, i)
            select new Curve(new Segment(At(40, (double)i / n), At(40, (double)j / n))),
        ];

    internal static Point At(double distance, double turn) =>
        Point.Origin.Polar(distance, Angle.OfTurn(turn));

    private static IEnumerable<double> Round(int n) =>
        Enumerable.Range(0, n).Select(i => (double)i / n);

    private static void Draw(Pencil pencil, Curve curve)
    {
        if (curve.IsCircle)
        {
            pencil.SetRadius(curve.Circle.Radius);
            pencil.Circle(pencil.Mark(curve.Circle.Centre));
            return;
        }
        var segment = curve.Segment.Bulge < 0 ? curve.Segment.Reversed() : curve.Segment;
        var (start, end) = (pencil.Mark(segment.Start), pencil.Mark(segment.End));
        if (segment.IsLine)
        {
            pencil.Join(start, end);
            return;
        }
        pencil.SetRadius(segment.Radius);
        pencil.Arc(pencil.Mark(segment.Centre), start, end);
    }
}
