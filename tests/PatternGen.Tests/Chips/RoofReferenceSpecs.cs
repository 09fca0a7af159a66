using CsCheck;
using NetTopologySuite.Operation.Distance;
using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

/// <summary>Random chips against NetTopologySuite on the finely flattened outline, and against plain sums over a grid.</summary>
public class RoofReferenceSpecs
{
    /// <summary>How far the flattened outline strays.</summary>
    private const double Astray = 1e-5;

    private static readonly Gen<Contour> Outlines = Gen.OneOf(
        Draw.Ring,
        Draw.PolygonRing,
        Draw.GridRing
    );

    [Fact]
    public void Random_outlines_have_sound_roofs() =>
        Outlines.Sample(
            outline =>
            {
                var roof = RoofCheck.Sound(outline);
                RoofCheck.ValleysShouldHangTogether(roof, Draw.Print(outline));
            },
            iter: 600,
            print: Draw.Print
        );

    [Fact]
    public void Random_rings_have_sound_roofs() =>
        Gen.Select(Outlines, Outlines, Gen.Double[0.05, 0.5])
            .Sample(
                (outer, inner, size) =>
                {
                    foreach (var part in Pierced(outer, inner, size).Parts)
                    {
                        var roof = Roof.Over(part);
                        RoofCheck.ShouldBeSound(
                            roof,
                            string.Join(" less ", part.Holes.Prepend(part.Outer).Select(Draw.Print))
                        );
                    }
                },
                iter: 200,
                print: drawn =>
                    $"{Draw.Print(drawn.Item1)}, {Draw.Print(drawn.Item2)}, {drawn.Item3:R}"
            );

    [Fact]
    public void Depths_at_random_points_are_those_of_the_flattened_outline() =>
        Gen.Select(Outlines, Gen.Double[0, 1].Array[20])
            .Sample(
                (outline, shares) =>
                {
                    var chip = ChipSolid.Walled(Roof.Over(outline), Angle.FromDegrees(65));
                    var flat = Flat.Polygon(outline, Astray);
                    for (var i = 0; i < shares.Length; i += 2)
                    {
                        var point = Within(outline, shares[i], shares[i + 1]);
                        var there = Flat.At(point.X, point.Y);
                        var distance = flat.Contains(there)
                            ? DistanceOp.Distance(flat.ExteriorRing, there)
                            : 0;
                        chip.DepthAt(point).ShouldBe(2.14450692050956 * distance, 3 * Astray);
                        chip.DepthAt(point).ShouldBeLessThanOrEqualTo(chip.Depth + 1e-9);
                    }
                },
                iter: 200,
                print: drawn => Draw.Print(drawn.Item1)
            );

    /// <summary>Two points 1 mm apart differ in depth by tan 65° mm at most: no wall is steeper.</summary>
    [Fact]
    public void No_wall_is_steeper_than_its_angle() =>
        Gen.Select(Outlines, Gen.Double[0, 1].Array[4])
            .Sample(
                (outline, shares) =>
                {
                    var chip = ChipSolid.Walled(Roof.Over(outline), Angle.FromDegrees(65));
                    var (one, other) = (
                        Within(outline, shares[0], shares[1]),
                        Within(outline, shares[2], shares[3])
                    );
                    Math.Abs(chip.DepthAt(one) - chip.DepthAt(other))
                        .ShouldBeLessThanOrEqualTo(2.14450692050957 * one.DistanceTo(other) + 1e-9);
                },
                iter: 1000,
                print: drawn => Draw.Print(drawn.Item1)
            );

    [Fact]
    public void Volumes_are_those_of_a_fine_grid() =>
        Gen.Select(Outlines, Outlines, Gen.Double[0.05, 0.4])
            .Sample(
                (outer, inner, size) =>
                {
                    foreach (var part in Pierced(outer, inner, size).Parts)
                    {
                        var roof = Roof.Over(part);
                        // A cell's sum is wrong where it holds an edge or a valley, by its size times itself at most.
                        const int Cells = 150;
                        var cell =
                            Math.Max(part.Outer.Extents.Width, part.Outer.Extents.Height) / Cells;
                        var length = RoofCheck.Sides(roof).Sum(side => side.Length);
                        GridSum(roof, Cells).ShouldBe(roof.Moment, cell * cell * 3 * length);
                    }
                },
                iter: 12,
                print: drawn =>
                    $"{Draw.Print(drawn.Item1)}, {Draw.Print(drawn.Item2)}, {drawn.Item3:R}"
            );

    /// <summary>Where all sides touch one circle, the chip is a pyramid: Euclid XII.7. MathWorld, Tangential Polygon: A = r s.</summary>
    [Fact]
    public void Every_outline_round_one_circle_is_a_pyramid() =>
        Gen.Select(Gen.Double[0.2, 1].Array[3, 12], Gen.Double[0.1, 50])
            .Where((steps, _) => steps.Max() < 0.45 * steps.Sum())
            .Sample(
                (steps, radius) =>
                {
                    var whole = steps.Sum();
                    var turn = 0.0;
                    var corners = new List<Point>();
                    foreach (var step in steps)
                    {
                        // Where two tangents meet, half-way in angle and r / cos of half the angle away.
                        var half = Math.PI * step / whole;
                        corners.Add(
                            Point.Origin.Polar(
                                radius / Math.Cos(half),
                                Angle.FromRadians(turn + half)
                            )
                        );
                        turn += 2 * half;
                    }
                    var chip = ChipSolid.Walled(
                        RoofCheck.Sound(Contour.Polygon(corners)),
                        Angle.FromDegrees(65)
                    );

                    chip.Clearance.ShouldBe(radius, 1e-11 * radius);
                    chip.Deepest.DistanceTo(Point.Origin).ShouldBeLessThan(1e-9 * radius);
                    chip.Volume.ShouldBe(chip.Area * chip.Depth / 3, 1e-10 * chip.Volume);
                    chip.Area.ShouldBe(radius * chip.Roof.Outline.Length / 2, 1e-10 * chip.Area);
                },
                iter: 200
            );

    private static Region Pierced(Contour outer, Contour inner, double size)
    {
        var middle = Roof.Over(outer).Deepest;
        var hole = inner
            .Transformed(Transform.Move(Point.Origin - inner.Extents.Centre))
            .Transformed(Transform.Resize(size))
            .Transformed(Transform.Move(middle - Point.Origin));
        return new(
            new Region(outer)
                .Difference(new Region(hole))
                .Parts.Where(part => part.Area > 1e-3)
                .SelectMany(part => part.Holes.Prepend(part.Outer))
        );
    }

    private static Point Within(Contour outline, double across, double up)
    {
        var extents = outline.Extents;
        return new(extents.Min.X + extents.Width * across, extents.Min.Y + extents.Height * up);
    }

    private static double GridSum(Roof roof, int cells)
    {
        double sum = 0;
        for (var i = 0; i < cells; i++)
        for (var j = 0; j < cells; j++)
            sum += roof.ClearanceAt(Within(roof.Outline, (i + 0.5) / cells, (j + 0.5) / cells));
        var extents = roof.Outline.Extents;
        return sum * extents.Width * extents.Height / cells / cells;
    }
}
