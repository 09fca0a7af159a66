using CsCheck;

namespace PatternGen.Tests.Geometry;

/// <summary>Generators aimed at trouble: touching, nearly touching, nearly equal, nearly straight, nearly a half circle.</summary>
internal static class Draw
{
    internal static Gen<double> OneOf(params double[] values) =>
        Gen.Int[0, values.Length - 1].Select(i => values[i]);

    /// <summary>A failing case with every digit, to paste into a test.</summary>
    internal static string Print((Contour Ring, double Number) drawn) =>
        $"{Print(drawn.Ring)}, {drawn.Number:R}";

    internal static string Print(SegmentRun run) =>
        "new(["
        + string.Join(
            ", ",
            run.Vertices.Select(v =>
                FormattableString.Invariant($"new({v.Point.X:R}, {v.Point.Y:R}, {v.Bulge:R})")
            )
        )
        + "])";

    internal static string Print((Curve[] Curves, Transform Moved) drawn) =>
        FormattableString.Invariant(
            $"{Print(drawn.Curves)}, A {drawn.Moved.A:R} B {drawn.Moved.B:R} mirrored {drawn.Moved.IsMirrored} move {drawn.Moved.Translation.X:R} {drawn.Moved.Translation.Y:R}"
        );

    internal static string Print(IEnumerable<Curve> curves) =>
        string.Join(
            ", ",
            curves.Select(curve =>
                curve.IsCircle
                    ? FormattableString.Invariant(
                        $"Circle({curve.Circle.Centre.X:R}, {curve.Circle.Centre.Y:R}, {curve.Circle.Radius:R})"
                    )
                    : FormattableString.Invariant(
                        $"Arc({curve.Segment.Start.X:R}, {curve.Segment.Start.Y:R}, {curve.Segment.End.X:R}, {curve.Segment.End.Y:R}, {curve.Segment.Bulge:R})"
                    )
            )
        );

    /// <summary>A cubic Bézier curve by Bernstein's polynomials.</summary>
    internal static Point Bernstein(Point[] p, double t)
    {
        var s = 1 - t;
        var (a, b, c, d) = (s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t);
        return new(
            a * p[0].X + b * p[1].X + c * p[2].X + d * p[3].X,
            a * p[0].Y + b * p[1].Y + c * p[2].Y + d * p[3].Y
        );
    }

    internal static Gen<Point> Point(double reach = 100) =>
        Gen.Select(Gen.Double[-reach, reach], Gen.Double[-reach, reach])
            .Select((x, y) => new Point(x, y));

    internal static Gen<Point> GridPoint { get; } =
        Gen.Select(Gen.Int[-5, 5], Gen.Int[-5, 5]).Select((x, y) => new Point(x, y));

    /// <summary>Bulges of every kind, lines and half circles often.</summary>
    internal static Gen<double> Bulge { get; } =
        Gen.OneOf(
            Gen.Const(0.0),
            Gen.Double[-1, 1],
            OneOf(1, -1, Math.BitDecrement(1), 1e-12, -1e-12, 1e-9, 1e-6, 1e-3),
            Gen.Double[-0.2, 0.2]
        );

    internal static Gen<Segment> Segment { get; } =
        Gen.Select(Point(), Point(), Bulge)
            .Select((start, end, bulge) => new Segment(start, end, bulge))
            .Where(segment => segment.Chord.Length > 0.01);

    internal static Gen<Transform> Transform { get; } =
        Gen.Select(Gen.Double[-720, 720], Gen.Double[-3, 3], Point(), Gen.Bool)
            .Select(
                (degrees, power, move, mirrored) =>
                {
                    var turned = PatternGen
                        .Geometry.Transform.Rotate(degrees)
                        .Then(PatternGen.Geometry.Transform.Resize(Math.Pow(10, power)))
                        .Then(PatternGen.Geometry.Transform.Move(move.X, move.Y));
                    return mirrored
                        ? PatternGen.Geometry.Transform.MirrorLeftRight(3).Then(turned)
                        : turned;
                }
            );

    /// <summary>Sound rings of lines and arcs round the origin, counter-clockwise, 4 to about 150 mm across.</summary>
    internal static Gen<Contour> Ring { get; } = RingWith(Bulge.Select(bulge => bulge * 0.6));

    internal static Gen<Contour> PolygonRing { get; } = RingWith(Gen.Const(0.0));

    /// <summary>Small whole coordinates and quarter circles: everything touches, lines up and coincides.</summary>
    internal static Gen<Contour> GridRing { get; } =
        Gen.Select(GridPoint, OneOf(0, 0, 1, -1, Math.Tan(Math.PI / 8), -Math.Tan(Math.PI / 8)))
            .Select((point, bulge) => new Vertex(point, bulge))
            .Array[3, 7]
            .Select(corners => new Contour(corners.AsEnumerable()))
            .Where(contour => contour.Validate().IsValid)
            .Select(contour => contour.CounterClockwise());

    private static Gen<Contour> RingWith(Gen<double> bulges) =>
        Gen.Select(Gen.Double[2, 75], Gen.Double[0.2, 1], bulges)
            .Array[3, 9]
            .Select(spokes =>
            {
                var whole = spokes.Sum(spoke => spoke.Item2);
                double turn = 0;
                var corners = new List<Vertex>();
                foreach (var (radius, share, bulge) in spokes)
                {
                    corners.Add(
                        new(
                            PatternGen.Geometry.Point.Origin.Polar(
                                radius,
                                Angle.OfTurn(turn / whole)
                            ),
                            bulge
                        )
                    );
                    turn += share;
                }
                return new Contour(corners);
            })
            .Where(contour => contour.Validate().IsValid && contour.SignedArea > 1);
}
