using static PatternGen.Tests.Geometry.Arrangements;

namespace PatternGen.Tests.Geometry;

/// <summary>Areas of faces against published values.</summary>
public class ArrangementAreaSpecs
{
    /// <summary>OEIS A093731, MathWorld "Vesica Piscis".</summary>
    [Fact]
    public void A_lens() =>
        FaceAt(new(0.5, 0), Circle(0, 0, 1), Circle(1, 0, 1)).ShouldBe(1.22836969860876, 1e-12);

    /// <summary>Aizu Online Judge CGL_7_I, sample.</summary>
    [Fact]
    public void A_lens_of_unequal_circles() =>
        FaceAt(new(0.5, 0), Circle(0, 0, 1), Circle(2, 0, 2)).ShouldBe(1.40306643968573875, 1e-12);

    /// <summary>Twice the circular segment of 60 degrees, MathWorld "Circular Segment".</summary>
    [Fact]
    public void A_petal_of_the_six_petal_rosette() =>
        FaceAt(new(0.5, 0), [.. Rosette(6, 1), Circle(0, 0, 1)]).ShouldBe(0.181172147412159, 1e-12);

    /// <summary>OEIS A060708.</summary>
    [Fact]
    public void A_Reuleaux_triangle() =>
        FaceAt(
                new(0.5, Math.Sqrt(3) / 6),
                Circle(0, 0, 1),
                Circle(1, 0, 1),
                Circle(0.5, Math.Sqrt(3) / 2, 1)
            )
            .ShouldBe(0.704770923010458, 1e-12);

    /// <summary>OEIS A090551.</summary>
    [Fact]
    public void The_gap_among_three_circles_that_touch()
    {
        Curve[] circles = [Circle(0, 0, 1), Circle(2, 0, 1), Circle(1, Math.Sqrt(3), 1)];
        Sound(circles).ShouldHave(3, 6, 4);
        FaceAt(new(1, Math.Sqrt(3) / 3), circles).ShouldBe(0.161254480773981, 1e-12);
    }

    /// <summary>4 - π.</summary>
    [Fact]
    public void The_gap_among_four_circles_that_touch() =>
        FaceAt(new(1, 1), Circle(0, 0, 1), Circle(2, 0, 1), Circle(2, 2, 1), Circle(0, 2, 1))
            .ShouldBe(0.858407346410207, 1e-12);

    /// <summary>Twice OEIS A342977.</summary>
    [Fact]
    public void A_leaf_between_two_quarter_circles()
    {
        var quarter = Math.Tan(Math.PI / 8);
        FaceAt(
                new(0.5, 0.5),
                new Segment(new(1, 0), new(0, 1), quarter),
                new Segment(new(0, 1), new(1, 0), quarter)
            )
            .ShouldBe(0.570796326794897, 1e-12);
    }

    /// <summary>MathWorld "Star Polygon": notches at cos(kπ/n) / cos((k - 1)π/n) of the radius.</summary>
    [Theory]
    [InlineData(5, 2, 0.381966011250105)]
    [InlineData(6, 2, 0.577350269189626)]
    [InlineData(8, 3, 0.541196100146197)]
    [InlineData(12, 5, 0.517638090205042)]
    public void The_notches_of_a_star(int points, int step, double notch)
    {
        var ring = Ring(points, 1);
        var star = Sound(
            ring.Select((p, i) => new Curve(new Segment(p, ring[(i + step) % points])))
        );
        star.OuterFace.Walks.ShouldHaveSingleItem()
            .Select(halfEdge => halfEdge.Origin.Point.DistanceTo(Point.Origin))
            .Min()
            .ShouldBe(notch, 1e-12);
    }

    private static double FaceAt(Point point, params Curve[] curves) =>
        Sound(curves).FaceAt(point)!.Value.ToPart().Area;
}
