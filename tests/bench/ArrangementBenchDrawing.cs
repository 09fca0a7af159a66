using PatternGen.Geometry;

namespace PatternGen.Bench;

/// <summary>Drawings of many circles.</summary>
internal static class ArrangementBenchDrawing
{
    /// <summary>Circles through one point, their centres evenly on a rim of the same radius, and the rim.</summary>
    internal static Curve[] Rosette(int circles) =>
        [
            .. Enumerable
                .Range(0, circles)
                .Select(i => new Curve(
                    new Circle(Point.Origin.Polar(40, Angle.OfTurn((double)i / circles)), 40)
                )),
            new Circle(Point.Origin, 40),
        ];

    /// <summary>Circles of radius 0.75 at spacing 1.</summary>
    internal static Curve[] Grid(int side) =>
        [
            .. from x in Enumerable.Range(0, side)
            from y in Enumerable.Range(0, side)
            select new Curve(new Circle(new(x, y), 0.75)),
        ];
}
