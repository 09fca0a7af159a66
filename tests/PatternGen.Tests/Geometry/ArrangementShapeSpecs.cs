using static PatternGen.Tests.Geometry.Arrangements;

namespace PatternGen.Tests.Geometry;

/// <summary>Curves that touch, overlap, dangle, or lie apart.</summary>
public class ArrangementShapeSpecs
{
    private static readonly double Quarter = Math.Tan(Math.PI / 8);

    [Fact]
    public void Nothing_leaves_the_outer_face_alone()
    {
        var nothing = Sound();

        nothing.ShouldHave(0, 0, 0);
        nothing.ComponentCount.ShouldBe(0);
        nothing.Locate(new(1, 2)).Face.ShouldBe(nothing.OuterFace);
        nothing.OuterFace.Area.ShouldBe(double.PositiveInfinity);
        Should.Throw<InvalidOperationException>(() => nothing.OuterFace.ToPart());
        Should.Throw<ArgumentNullException>(() => Arrangement.Of((IEnumerable<Curve>)null!));
    }

    [Fact]
    public void A_lone_circle_has_one_node_on_its_right()
    {
        var circle = Sound(Circle(3, 4, 5));

        circle.ShouldHave(1, 1, 1);
        circle.Nodes[0].Point.ShouldBe(new(8, 4));
        circle.Nodes[0].Degree.ShouldBe(2);
        circle.Edges[0].Forward.Face.Area.ShouldBe(25 * Math.PI, 1e-12);
        circle.Edges[0].Backward.Face.IsOuter.ShouldBeTrue();
    }

    [Fact]
    public void Curves_smaller_than_the_tolerance_vanish() =>
        Sound(
                Line(0, 0, 10, 0),
                Line(5, 1, 5, 1),
                Line(6, 1, 6 + 1e-10, 1),
                new Segment(new(7, 1), new(7, 1), 3),
                Circle(8, 1, 1e-10)
            )
            .ShouldHave(2, 1, 0);

    [Fact]
    public void A_curve_drawn_twice_is_one_edge_that_remembers_both()
    {
        var twice = Sound(Line(0, 0, 10, 0), Circle(5, 5, 1), Line(10, 0, 0, 0), Circle(5, 5, 1));

        twice.ShouldHave(3, 2, 1);
        twice
            .Edges.Select(edge => edge.Sources)
            .ShouldBe([
                [0, 2],
                [1, 3],
            ]);
    }

    [Fact]
    public void Lines_that_overlap_in_part_share_that_part()
    {
        var lines = Sound(Line(0, 0, 6, 3), Line(8, 4, 2, 1), Line(3, 0, 3, 5));

        lines.ShouldHave(7, 6, 0);
        lines
            .Edges.Where(edge => edge.Sources.Count == 2)
            .Sum(edge => edge.Forward.Segments[0].Length)
            .ShouldBe(Math.Sqrt(20), 1e-12);
    }

    [Fact]
    public void Arcs_on_a_circle_are_pieces_of_it()
    {
        var long270 = Segment.Arc(new(3, 4), 5, Angle.OfTurn(0), Angle.OfTurn(0.75));
        var arrangement = Sound(
            long270,
            new Circle(new(3, 4), 5),
            Segment.Arc(new(3, 4), 5, Angle.OfTurn(0.5), Angle.OfTurn(0.4)).Reversed()
        );

        // Cut at 0, 0.5, 0.75 and 0.9 turns.
        arrangement.ShouldHave(4, 4, 1);
        arrangement.Edges.Select(edge => edge.Sources.Count).Order().ShouldBe([1, 2, 2, 3]);
        Sound(long270, long270.Reversed()).ShouldHave(2, 1, 0);
    }

    /// <summary>A third curve must not meet two that are one twice.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1e-9)]
    [InlineData(4e-9)]
    public void Nearly_equal_curves_are_one_for_a_third(double off)
    {
        var arrangement = Sound(
            Circle(0, 0, 5),
            Segment.Arc(new(off, 0), 5 + off, Angle.OfTurn(0.1), Angle.OfTurn(0.3)),
            Segment.Arc(new(0, off), 5, Angle.OfTurn(0.2), Angle.OfTurn(0.7)),
            Line(-9, 4.9, 9, 4.95),
            Line(0, 9, 0, -9)
        );
        // Four ends of arcs, two crossings of each line with the circle, one of the lines, four ends of lines.
        arrangement.ShouldHave(13, 16, 4);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Circles_that_touch_in_one_point_share_it(int side)
    {
        var along = new Vector(0.6, 0.8);
        Curve[] circles =
        [
            .. Enumerable
                .Range(1, 8)
                .Select(i => new Curve(
                    new Circle(new Point(1, 2) + along * (i % 2 == 0 ? i * side : i), i)
                )),
            new Segment(new Point(1, 2) + along.Left * 5, new Point(1, 2) - along.Left * 7),
        ];
        var arrangement = Sound(circles);

        // One node where all touch, and the ends of the line that touches them too.
        arrangement.ShouldHave(3, 10, 8);
        arrangement.Nodes.Max(node => node.Degree).ShouldBe(18);
    }

    [Fact]
    public void A_chain_of_circles_that_touch() =>
        Sound(Enumerable.Range(0, 20).Select(i => Circle(2 * i, 0, 1))).ShouldHave(19, 38, 20);

    [Fact]
    public void Ends_on_curves_are_nodes() =>
        Sound(
                Line(0, 0, 10, 0),
                Line(5, 0, 5, 4),
                Circle(5, 6, 2),
                new Segment(new(7, 6), new(10, 0), -Quarter)
            )
            .ShouldHave(5, 6, 2);

    [Fact]
    public void Dangling_ends_are_kept_but_bound_nothing()
    {
        var arrangement = Sound([
            .. Curves(Shapes.Square(10)),
            Line(10, 10, 7, 7),
            Line(7, 7, 7, 5),
            Line(7, 7, 5, 7),
            Line(0, 0, -3, -3),
        ]);

        arrangement.ShouldHave(8, 8, 1);
        arrangement.Edges.Count(edge => edge.IsDangling).ShouldBe(4);
        arrangement.FaceAt(new(1, 1))!.Value.ToPart().Outer.Count.ShouldBe(4);
        arrangement.FaceAt(new(1, 1))!.Value.Area.ShouldBe(100, 1e-12);
    }

    [Fact]
    public void A_bridge_between_rings_bounds_nothing()
    {
        var arrangement = Sound(Circle(0, 0, 2), Circle(0, 0, 5), Line(2, 0, 5, 0));
        var ring = arrangement.FaceAt(new(0, 3))!.Value.ToPart();

        arrangement.ShouldHave(2, 3, 2);
        arrangement.ComponentCount.ShouldBe(1);
        ring.Holes.ShouldHaveSingleItem().Area.ShouldBe(4 * Math.PI, 1e-12);
        ring.Area.ShouldBe(21 * Math.PI, 1e-12);
    }

    [Fact]
    public void Islands_in_islands_are_holes()
    {
        var rings = Sound([
            .. Enumerable.Range(1, 9).Select(radius => Circle(0, 0, radius)),
            Circle(30, 0, 1),
            Line(20, 20, 21, 20),
            Line(0.1, 0, 0.2, 0),
        ]);

        rings.ComponentCount.ShouldBe(12);
        rings.ShouldHave(14, 12, 10);
        rings.OuterFace.Walks.Count.ShouldBe(3);
        rings.FaceAt(new(0, 4.5))!.Value.Area.ShouldBe(9 * Math.PI, 1e-12);
    }

    [Fact]
    public void A_face_that_touches_itself_has_rings_that_touch()
    {
        var arrangement = Sound([
            .. Curves(Shapes.Square(10)),
            .. Curves(Shapes.Circle(2, 2, 5)),
            .. Curves(Shapes.Circle(1, 9, 5)),
        ]);
        var face = arrangement.FaceAt(new(9, 9))!.Value.ToPart();

        arrangement.BoundedFaces.Count().ShouldBe(3);
        face.Holes.Count.ShouldBe(2);
        face.Area.ShouldBe(100 - 5 * Math.PI, 1e-12);
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e-5)]
    [InlineData(-1e-9)]
    public void A_flat_arc_bounds_a_face_with_its_chord_only_if_it_rises_beyond_the_tolerance(
        double bulge
    )
    {
        var arrangement = Sound(
            new Segment(new(0, 0), new(10, 0), bulge),
            Line(0, 0, 10, 0),
            Line(5, -5, 5, 5)
        );
        if (Math.Abs(bulge) < 1e-8)
            arrangement.ShouldHave(5, 4, 0);
        else
            arrangement.ShouldHave(6, 7, 2);
    }

    /// <summary>Walking on from the outer face, and back again.</summary>
    [Fact]
    public void I_can_walk_round_a_face_and_to_its_neighbours()
    {
        var arrangement = Sound(Circle(0, 0, 1), Circle(1, 0, 1));
        var lens = arrangement.FaceAt(new(0.5, 0))!.Value;
        var walk = lens.Walks.ShouldHaveSingleItem();

        walk.Count.ShouldBe(2);
        walk.ShouldAllBe(halfEdge => halfEdge.Face == lens && halfEdge.Next.Next == halfEdge);
        walk.Select(halfEdge => halfEdge.Twin.Face.Area)
            .ShouldAllBe(area => Math.Abs(area - (Math.PI - 1.22836969860876)) < 1e-12);
        walk[0].Origin.Leaving.Select(halfEdge => halfEdge.Face).Distinct().Count().ShouldBe(4);
    }

    /// <summary>A line that starts where it touches a circle: the turn moves that place along the circle a little, off its right or left.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1e-9)]
    [InlineData(6.6e-7)]
    [InlineData(5.89e-4)]
    [InlineData(0.01)]
    [InlineData(45)]
    [InlineData(90.0000007)]
    public void A_tangent_that_starts_where_it_touches_needs_no_other_node(double degrees)
    {
        Curve[] drawing = [Line(4, -1, 4, 5), Circle(5, -1, 1)];
        foreach (var mirror in (Transform[])[Transform.Identity, Transform.MirrorLeftRight()])
        {
            var moved = mirror.Then(Transform.Rotate(degrees));
            Sound(drawing.Select(curve => curve.Transformed(moved))).ShouldHave(2, 2, 1);
        }
    }

    /// <summary>The same for a line that crosses there: its start and the right of the circle are two merge distances apart.</summary>
    [Fact]
    public void A_line_from_a_point_of_a_circle_needs_no_other_node()
    {
        var turn = Transform.Rotate(Angle.FromRadians(-1.7364e-8));
        Curve[] drawing = [Circle(3, -3, 1), Line(4, -3, -2, 2), Line(-2, 2, -2, -4)];

        var still = Sound(drawing);
        ShouldBeTheSame(still, Sound(drawing.Select(curve => curve.Transformed(turn))));
    }

    /// <summary>Rounding may make either half a little more than a half circle.</summary>
    [Fact]
    public void A_half_circle_on_its_circle_shares_its_edge_however_it_lies()
    {
        foreach (var bulge in (double[])[1, -1])
        foreach (var degrees in Enumerable.Range(0, 360))
        {
            var moved = Transform.Rotate(degrees + 0.1).Then(Transform.Move(-6.42, 0.314));
            Curve[] drawing = [new Segment(new(1, 5), new(-5, 5), bulge), Circle(-2, 5, 3)];
            var arrangement = Sound(drawing.Select(curve => curve.Transformed(moved)));

            arrangement.ShouldHave(2, 2, 1);
            arrangement.Edges.Count(edge => edge.Sources.Count == 2).ShouldBe(1);
        }
    }

    /// <summary>
    /// Two curves at an angle of 1e-7 are one up to the last node within the tolerance; from there they leave without a gap,
    /// and so are still together at the next node, a little farther on.
    /// </summary>
    [Fact]
    public void Curves_at_a_very_small_angle_are_one_up_to_the_last_node_that_both_reach()
    {
        Sound(
            Circle(0, -41.48229775734529, 27.787948326045132),
            new Segment(new(47.2034251882591, -1), new(-45.343177146424, 0), 1.83499256232066),
            Line(-5.548E-11, 32.86187009738531, 0, 0.1134020618556701),
            Circle(0, 0.15384615384615385, 2.8187298191976184),
            new Segment(new(0, 0.288135593220339), new(0, 3), 1.418194343354953),
            Line(0, 1.353658536585366, -4.093E-06, 44.7301190584372)
        );
        Sound(
            Line(0, 6, 7, 5.994E-07),
            new Segment(new(3.364E-13, -14), new(0, 7), 8.493E-08),
            Line(0, 5.9, -1.6666666666666667, 36.76752174033744),
            new Segment(new(4.962962962962963, 44), new(0, -13.553271229195808), 3.466666666666667),
            Line(0, 0.19230769230769232, 0, 47.60289071464234),
            Circle(30.66272964379535, 2.4285714285714284, 34.84006239317008)
        );
    }

    [Fact]
    public void A_curve_says_where_it_lies()
    {
        $"{Circle(3, -4, 5.5)}".ShouldBe("circle round (3, -4) of radius 5.5");
        $"{Line(0, 0, 10, 0)}".ShouldBe("(0, 0) to (10, 0)");
        $"{new Curve(new Segment(new(0, 0), new(10, 0), 1))}".ShouldBe("(0, 0) to (10, 0) bulge 1");
    }
}
