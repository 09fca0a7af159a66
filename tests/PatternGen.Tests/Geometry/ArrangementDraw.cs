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

    /// <summary>
    /// Turns by hundredths of a degree. A drawing turned by 1e-8 is within the tolerance of the one that it was, and may be
    /// arranged as either.
    /// </summary>
    internal static Gen<Transform> Turn { get; } =
        Gen.Select(Gen.Int[-72_000, 72_000], Gen.Double[-3, 3], Draw.Point(), Gen.Bool)
            .Select(
                (hundredths, power, move, mirrored) =>
                    (mirrored ? Transform.MirrorLeftRight(3) : Transform.Identity)
                        .Then(Transform.Rotate(hundredths / 100.0))
                        .Then(Transform.Resize(Math.Pow(10, power)))
                        .Then(Transform.Move(move - Point.Origin))
            );

    private static Gen<Curve> Any { get; } =
        Gen.OneOf(
            Gen.Select(Place, Place)
                .Where((start, end) => start != end)
                .Select((start, end) => new Curve(new Segment(start, end))),
            Gen.Select(Place, Place, Thousandths(4))
                .Where((start, end, _) => start != end)
                .Select((start, end, bulge) => new Curve(new Segment(start, end, bulge))),
            Gen.Select(Place, Gen.Int[100, 40_000])
                .Select((centre, radius) => new Curve(new Circle(centre, radius / 1000.0)))
        );

    private static Gen<Point> Place =>
        Gen.Select(Thousandths(50), Thousandths(50)).Select((x, y) => new Point(x, y));

    /// <summary>
    /// Numbers on a thousandth of a millimetre: curves meet exactly, or stay farther apart than the tolerance. What comes
    /// nearer without meeting may be refused.
    /// </summary>
    private static Gen<double> Thousandths(int reach) =>
        Gen.Int[-1000 * reach, 1000 * reach].Select(number => number / 1000.0);
}
