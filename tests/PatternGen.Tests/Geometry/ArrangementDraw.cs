using CsCheck;

namespace PatternGen.Tests.Geometry;

/// <summary>Drawings at random: any curves, and curves on whole coordinates, where all touches and coincides.</summary>
internal static class ArrangementDraw
{
    internal static Gen<Curve[]> Drawing(int most) => Any.Array[1, most];

    internal static Gen<Curve[]> GridDrawing { get; } =
        Gen.OneOf(
            Gen.Select(Draw.GridPoint, Draw.GridPoint)
                .Select((start, end) => new Curve(new Segment(start, end))),
            Gen.Select(
                    Draw.GridPoint,
                    Draw.GridPoint,
                    Draw.OneOf(1, -1, 0.41421356237309503, 2.414213562373095, -2.414213562373095)
                )
                .Select((start, end, bulge) => new Curve(new Segment(start, end, bulge))),
            Gen.Select(Draw.GridPoint, Gen.Int[1, 6])
                .Select((centre, halves) => new Curve(new Circle(centre, halves / 2.0)))
        ).Array[1, 25];

    private static Gen<Curve> Any { get; } =
        Gen.OneOf(
            Gen.Select(Draw.Point(50), Draw.Point(50))
                .Select((start, end) => new Curve(new Segment(start, end))),
            Gen.Select(Draw.Point(50), Draw.Point(50), Gen.Double[-4, 4])
                .Select((start, end, bulge) => new Curve(new Segment(start, end, bulge))),
            Gen.Select(Draw.Point(50), Gen.Double[0.1, 40])
                .Select((centre, radius) => new Curve(new Circle(centre, radius)))
        );
}
