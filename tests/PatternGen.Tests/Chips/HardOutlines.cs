using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

/// <summary>Sound outlines without holes on which walls are hard to find, by name.</summary>
internal static class HardOutlines
{
    private static readonly double Quarter = Math.Tan(Math.PI / 8);

    internal static IReadOnlyDictionary<string, Contour> All { get; } =
        Make().ToDictionary(pair => pair.Name, pair => pair.Outline);

    private static IEnumerable<(string Name, Contour Outline)> Make() =>
        [.. Flat(), .. Small(), .. Pointed(), .. Many(), .. Smooth()];

    private static IEnumerable<(string, Contour)> Flat()
    {
        foreach (var bulge in (double[])[1e-3, 1e-6, 1e-9, 1e-12, -1e-3, -1e-6, -1e-9, -1e-12])
        {
            yield return (
                $"triangle with sides of bulge {bulge}",
                new(
                    ChipOutlines
                        .Triangle(13, 14, 15)
                        .Vertices.Select(corner => new Vertex(corner.Point, bulge))
                )
            );
            yield return (
                $"square with one side of bulge {bulge}",
                new(new Vertex(new(0, 0), bulge), new(new(6, 0)), new(new(6, 6)), new(new(0, 6)))
            );
            yield return (
                $"square whose opposite sides are of bulge {bulge} and its negative",
                new(
                    new Vertex(new(0, 0), bulge),
                    new(new(6, 0)),
                    new(new(6, 6), -bulge),
                    new(new(0, 6))
                )
            );
        }
        foreach (var bulge in (double[])[1e-3, 1e-5])
            yield return (
                $"lens of bulge {bulge}",
                new(new Vertex(new(0, 0), bulge), new(new(10, 0), bulge))
            );
        foreach (var rise in (double[])[1e-3, 1e-6, 1e-9, 1e-12, 0])
        {
            yield return (
                $"sides that differ from parallel by {rise}",
                Contour.Polygon(new(0, 0), new(10, 0), new(10, 4 + rise), new(0, 4))
            );
            yield return (
                $"sides that go on with a turn of {rise} out",
                Contour.Polygon(new(0, 0), new(5, -rise), new(10, 0), new(10, 4), new(0, 4))
            );
            yield return (
                $"sides that go on with a turn of {rise} in",
                Contour.Polygon(new(0, 0), new(5, rise), new(10, 0), new(10, 4), new(0, 4))
            );
            yield return (
                $"a trapezium nearly parallel by {rise} along",
                Contour.Polygon(new(0, 0), new(10, rise), new(9, 4), new(1, 4))
            );
        }
        foreach (var turn in (double[])[2e-4, 3e-5, 1.1e-5, 9e-6, 3e-6, 1e-7])
        foreach (var way in (int[])[1, -1])
            yield return (
                $"a corner of {turn} to the {(way > 0 ? "left" : "right")}",
                Contour.Polygon(
                    new(0, 0),
                    new(5, 0),
                    new(10, way * 5 * turn),
                    new(10, 4),
                    new(0, 4)
                )
            );
    }

    private static IEnumerable<(string, Contour)> Small()
    {
        foreach (var tiny in (double[])[1e-3, 1e-6])
        {
            yield return (
                $"a square with a corner cut off by {tiny}",
                Contour.Polygon(
                    new(0, 0),
                    new(10 - tiny, 0),
                    new(10, tiny),
                    new(10, 10),
                    new(0, 10)
                )
            );
            yield return (
                $"a square with a step of {tiny}",
                Contour.Polygon(
                    new(0, 0),
                    new(4, 0),
                    new(4, tiny),
                    new(10, tiny),
                    new(10, 10),
                    new(0, 10)
                )
            );
            yield return (
                $"an L whose inner corner is rounded by {tiny}",
                new(
                    new Vertex(new(0, 0)),
                    new(new(20, 0)),
                    new(new(20, 10)),
                    new(new(10 + tiny, 10), -Quarter),
                    new(new(10, 10 + tiny)),
                    new(new(10, 20)),
                    new(new(0, 20))
                )
            );
            yield return (
                $"a square with its corners rounded by {tiny}",
                Shapes.RoundedRectangle(10, 10, tiny)
            );
            yield return (
                $"a rectangle with its corners rounded by {tiny}",
                Shapes.RoundedRectangle(20, 10, tiny)
            );
        }
        yield return (
            "sides cut into pieces that go on straight",
            Contour.Polygon(
                new(0, 0),
                new(1, 0),
                new(2, 0),
                new(2 + 1e-6, 0),
                new(10, 0),
                new(10, 3),
                new(10, 5),
                new(10, 7),
                new(5, 7),
                new(0, 7),
                new(0, 1)
            )
        );
    }

    private static IEnumerable<(string, Contour)> Pointed()
    {
        yield return ("gap among three circles", Shapes.Gap);
        yield return ("gap among four circles", ChipOutlines.GapAmongFour);
        yield return ("L", Shapes.LShape);
        yield return ("dumb-bell", Shapes.DumbBell(4));
        yield return ("dumb-bell with a thin neck", Shapes.DumbBell(1e-4));
        foreach (var width in (double[])[1, 1e-2, 1e-4, 1e-5])
        {
            yield return ($"needle {width} wide", ChipOutlines.Triangle(50, 50, width));
            yield return (
                $"square with a needle {width} wide that points in",
                Contour.Polygon(
                    new(0, 0),
                    new(5 - width / 2, 0),
                    new(5, 6.3),
                    new(5 + width / 2, 0),
                    new(10, 0),
                    new(10, 10),
                    new(0, 10)
                )
            );
            yield return (
                $"square with a slot {width} wide",
                Contour.Polygon(
                    new(0, 0),
                    new(5 - width / 2, 0),
                    new(5 - width / 2, 6),
                    new(5 + width / 2, 6),
                    new(5 + width / 2, 0),
                    new(10, 0),
                    new(10, 10),
                    new(0, 10)
                )
            );
        }
        yield return ("crescent", new(new Vertex(new(0, -5), 0.9), new Vertex(new(0, 5), -0.5)));
        yield return (
            "thin crescent",
            new(new Vertex(new(0, -5), 0.5), new Vertex(new(0, 5), -0.4999))
        );
        // A quarter circle and its tangent at the start: a horn.
        yield return ("horn", new(new Vertex(new(0, 0)), new(new(5, 0)), new(new(5, 5), -Quarter)));
        yield return ("drop", new(new Vertex(new(0, 0)), new(new(8, -3), 0.9), new(new(8, 3))));
        yield return (
            "half moon in a quarter",
            new(new Vertex(new(0, 0), Quarter), new(new(7, 7), -0.2))
        );
    }

    private static IEnumerable<(string, Contour)> Many()
    {
        yield return ("comb of 30 teeth", Comb(30));
        yield return ("star {30/11}", Star(30, 11, 40));
        yield return ("star {5/2}", Star(5, 2, 10));
        yield return ("star {12/5}", Star(12, 5, 10));
        yield return ("regular 30-gon", Shapes.Regular(30, 20));
        yield return ("regular 200-gon", Shapes.Regular(200, 50));
        yield return ("cog of 24 teeth", Cog(24));
        yield return ("flower of 16 hollows", Scallops(16, -0.3));
        yield return ("flower of 16 bulges", Scallops(16, 0.7));
        yield return ("flower of 7 half circles", Scallops(7, 1));
    }

    private static IEnumerable<(string, Contour)> Smooth()
    {
        yield return ("stadium", Shapes.Stadium(10, 3));
        yield return ("rounded rectangle", Shapes.RoundedRectangle(20, 10, 2));
        yield return ("rounded square", Shapes.RoundedRectangle(10, 10, 2));
        yield return (
            "square rounded to a circle, nearly",
            Shapes.RoundedRectangle(10, 10, 4.999999)
        );
        yield return ("circle of 12 arcs", CircleOf(12));
        yield return ("oval of four arcs", Oval(10, 4));
        yield return ("flat oval of four arcs", Oval(10, 1));
        yield return ("oval hardly one", Oval(10, 9.9999));
    }

    private static Contour Comb(int teeth)
    {
        var corners = new List<Point> { new(0, -5), new(2 * teeth, -5) };
        for (var i = teeth; i > 0; i--)
            corners.AddRange([new(2 * i, 0), new(2 * i - 0.4, 7), new(2 * i - 1.2, 0)]);
        corners.Add(new(0, 0));
        return Contour.Polygon(corners);
    }

    /// <summary>The outline of a star polygon; MathWorld, Star Polygon: notches at cos(kπ/n) / cos((k-1)π/n) of the radius.</summary>
    private static Contour Star(int n, int k, double radius)
    {
        var notch = radius * Math.Cos(k * Math.PI / n) / Math.Cos((k - 1) * Math.PI / n);
        return Contour.Polygon(
            Enumerable
                .Range(0, 2 * n)
                .Select(i =>
                    Point.Origin.Polar(i % 2 == 0 ? radius : notch, Angle.OfTurn(i / (2.0 * n)))
                )
        );
    }

    private static Contour Cog(int teeth) =>
        Contour.Polygon(
            Enumerable
                .Range(0, 4 * teeth)
                .Select(i =>
                    Point.Origin.Polar(i % 4 < 2 ? 20 : 17, Angle.OfTurn(i / (4.0 * teeth)))
                )
        );

    private static Contour Scallops(int count, double bulge) =>
        new(Shapes.Regular(count, 20).Vertices.Select(corner => new Vertex(corner.Point, bulge)));

    private static Contour CircleOf(int arcs) =>
        new(
            Shapes
                .Regular(arcs, 7)
                .Vertices.Select(corner => new Vertex(corner.Point, Math.Tan(Math.PI / 2 / arcs)))
        );

    /// <summary>
    /// The four-centred oval with half axes a and b: arcs about (±p, 0) of radius a - p and about (0, ±q) of radius b + q, which meet
    /// smoothly where (b + q) - (a - p) = √(p² + q²).
    /// </summary>
    private static Contour Oval(double a, double b)
    {
        // (c + q)² = p² + q² with c = b - a + p; any p from a - b to a makes an oval.
        var (p, c) = (a - b / 2, b / 2);
        var q = (p * p - c * c) / (2 * c);
        var turn = Math.Atan2(q, p);
        var joint = new Point(p + (a - p) * Math.Cos(turn), (a - p) * Math.Sin(turn));
        var (narrow, wide) = (Math.Tan(turn / 2), Math.Tan((Math.PI / 2 - turn) / 2));
        return new(
            new Vertex(new(joint.X, -joint.Y), narrow),
            new(joint, wide),
            new(new(-joint.X, joint.Y), narrow),
            new(new(-joint.X, -joint.Y), wide)
        );
    }
}
