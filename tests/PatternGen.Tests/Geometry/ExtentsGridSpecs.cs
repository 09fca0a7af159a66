using CsCheck;

namespace PatternGen.Tests.Geometry;

public class ExtentsGridSpecs
{
    private static readonly Gen<Extents[]> Boxes = Gen.Select(
            Draw.Point(),
            Draw.OneOf(0, 0.1, 3, 200),
            Draw.OneOf(0, 0.1, 3, 200)
        )
        .Select((corner, width, height) => new Extents(corner, corner + new Vector(width, height)))
        .Array[0, 60];

    [Fact]
    public void Each_touching_pair_is_told_once() =>
        Boxes.Sample(
            boxes =>
            {
                var found = new List<(int, int)>();
                new ExtentsGrid(boxes).VisitPairs((a, b) => found.Add((a, b)));
                var expected =
                    from a in Enumerable.Range(0, boxes.Length)
                    from b in Enumerable.Range(a + 1, boxes.Length - a - 1)
                    where boxes[a].Touches(boxes[b])
                    select (a, b);
                found.Order().ShouldBe(expected.Order());
            },
            iter: 1000
        );

    [Fact]
    public void Each_rectangle_in_a_window_is_told_once() =>
        Gen.Select(Boxes, Draw.Point(150), Gen.Double[0, 50])
            .Sample(
                (boxes, corner, size) =>
                {
                    var window = new Extents(corner, corner + new Vector(size, size));
                    var found = new List<int>();
                    new ExtentsGrid(boxes).Visit(window, found.Add);
                    found
                        .Order()
                        .ShouldBe(
                            Enumerable.Range(0, boxes.Length).Where(i => boxes[i].Touches(window))
                        );
                },
                iter: 1000
            );

    [Fact]
    public void Points_within_the_merge_distance_are_one()
    {
        var merger = new PointMerger(0.1);

        merger.IdOf(new(0, 0)).ShouldBe(0);
        merger.IdOf(new(0.09, 0)).ShouldBe(0);
        merger.IdOf(new(0.2, 0)).ShouldBe(1);
        merger.IdOf(new(0.19, 0.01)).ShouldBe(1);
        merger.IdOf(new(-0.05, -0.05)).ShouldBe(0);
        merger.Points.ToArray().ShouldBe([new(0, 0), new(0.2, 0)]);
    }

    [Fact]
    public void Winding_numbers_are_the_same_with_and_without_an_index() =>
        Gen.Select(Draw.GridRing.Array[1, 4], Draw.GridPoint)
            .Sample(
                (rings, point) =>
                {
                    var curves = rings.SelectMany(ring => ring.Segments).ToArray();
                    new WindingIndex(curves)
                        .At(point)
                        .ShouldBeOneOf(Winding.Of(curves, point), Turned(curves, point));
                },
                iter: 2000
            );

    /// <summary>Points on a curve may count to either side, as the index turns wide drawings upright.</summary>
    private static int Turned(Segment[] curves, Point point)
    {
        var turn = Transform.Rotate(90);
        return Winding.Of(
            Array.ConvertAll(curves, curve => curve.Transformed(turn)),
            turn.Apply(point)
        );
    }
}
