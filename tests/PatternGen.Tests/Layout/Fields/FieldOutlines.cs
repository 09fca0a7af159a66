using CsCheck;
using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Layout.Fields;

/// <summary>Outlines to fill: rounded and straight ones, with holes and without, turned by any angle.</summary>
internal static class FieldOutlines
{
    internal static Region Disc { get; } = new(Shapes.Circle(50));

    /// <summary>An L-shaped panel with a round hole.</summary>
    internal static Region Panel { get; } =
        new(
            Contour.Polygon(
                new(0, 0),
                new(120, 0),
                new(120, 50),
                new(60, 50),
                new(60, 100),
                new(0, 100)
            ),
            Shapes.Circle(12, 30, 28)
        );

    internal static Region Lid { get; } = new(Shapes.RoundedRectangle(130, 80, 30));

    internal static Gen<Region> Any { get; } =
        Gen.Select(
                Gen.OneOf(
                    Gen.Select(Gen.Double[40, 90], Gen.Double[40, 90], Gen.Double[1, 19])
                        .Select((w, h, r) => Shapes.RoundedRectangle(w, h, r)),
                    Gen.Select(Gen.Int[3, 9], Gen.Double[30, 50])
                        .Select((n, r) => Shapes.Regular(n, r)),
                    Gen.Select(Gen.Double[5, 60], Gen.Double[15, 30])
                        .Select((s, r) => Shapes.Stadium(s, r)),
                    Gen.Double[20, 40]
                        .Select(side => Shapes.LShape.Transformed(Transform.Resize(side)))
                ),
                Gen.Double[0, 360],
                Gen.Double[2, 20],
                Gen.Double[0, 1],
                Gen.Bool
            )
            .Select(
                (outer, turn, radius, along, isHollow) =>
                {
                    var ring = outer.Transformed(Transform.Rotate(turn));
                    var middle = ring.Centroid.Towards(ring.PointAt(along * ring.Length), 0.4);
                    var hole = new Circle(middle, radius).ToContour();
                    var isInside = ring.Contains(middle) && ring.DistanceTo(middle) > radius + 0.5;
                    return isHollow && isInside ? new Region(ring, hole) : new Region(ring);
                }
            );
}
