using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

/// <summary>Valleys are conics: each is checked by the distances from its foci, which are centres of arcs and corners.</summary>
public class ValleySpecs
{
    private const double Tight = 1e-11;

    [Fact]
    public void A_triangle_has_three_valleys_that_meet_in_its_incentre() // Euclid IV.4
    {
        var roof = RoofCheck.Sound(ChipOutlines.Triangle(3, 4, 5));

        roof.Valleys.Count.ShouldBe(3);
        roof.Valleys.ShouldAllBe(valley => valley.Kind == ValleyKind.Line);
        roof.Nodes.Count.ShouldBe(4);
        roof.Nodes.Count(node => node.ValleyCount == 1 && node.Clearance < Tight).ShouldBe(3);
        roof.Nodes.Single(node => node.ValleyCount == 3).Clearance.ShouldBe(1, Tight);
    }

    [Fact]
    public void A_rectangle_has_a_ridge_and_four_valleys_at_45_degrees() // Aichholzer and Aurenhammer
    {
        var roof = RoofCheck.Sound(Contour.Rectangle(new(0, 0), new(10, 4)));

        roof.Valleys.Count.ShouldBe(5);
        roof.Nodes.Count(node => node.ValleyCount == 3).ShouldBe(2);
        var ridge = roof.Valleys.Single(valley => valley.IsLevel);
        (ridge.End.Place - ridge.Start.Place).Unit().Cross(new(1, 0)).ShouldBe(0, Tight);
        foreach (var valley in roof.Valleys.Where(valley => !valley.IsLevel))
        {
            var direction = (valley.End.Place - valley.Start.Place).Unit();
            Math.Abs(direction.X).ShouldBe(Math.Sqrt(0.5), Tight);
            Math.Abs(direction.Y).ShouldBe(Math.Sqrt(0.5), Tight);
        }
    }

    [Fact]
    public void A_square_has_no_ridge() // Aichholzer and Aurenhammer: the ridge vanishes
    {
        var roof = RoofCheck.Sound(Shapes.Square(6));

        roof.Valleys.Count.ShouldBe(4);
        roof.Nodes.Single(node => node.ValleyCount == 4)
            .Place.DistanceTo(new(3, 3))
            .ShouldBeLessThan(Tight);
    }

    /// <summary>A convex n-gon has n walls, n - 2 inner nodes and 2n - 3 valleys, if no four sides touch one circle (Aichholzer and Aurenhammer).</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(11)]
    [InlineData(30)]
    public void A_convex_outline_has_as_many_valleys_as_its_skeleton(int corners)
    {
        // On a flat ellipse, whose axis tells all circles inside apart.
        var roof = RoofCheck.Sound(
            Contour.Polygon(
                Enumerable
                    .Range(0, corners)
                    .Select(i => 2 * Math.PI * (i + 0.3 * Math.Sin(i * i)) / corners)
                    .Select(angle => new Point(9 * Math.Cos(angle), 5 * Math.Sin(angle)))
            )
        );

        roof.Walls.Count.ShouldBe(corners);
        roof.Nodes.Count(node => node.ValleyCount >= 3).ShouldBe(corners - 2);
        roof.Valleys.Count.ShouldBe(2 * corners - 3);
    }

    [Fact]
    public void Beside_a_corner_that_points_in_the_valley_is_a_parabola() // focus and directrix
    {
        var parabolas = RoofCheck
            .Sound(Shapes.LShape)
            .Valleys.Where(valley => valley.Kind == ValleyKind.Parabola)
            .ToArray();

        // One below the corner and one to the left of it; y and x are the distances from the outer sides.
        parabolas.Length.ShouldBe(2);
        foreach (var place in parabolas.SelectMany(Places))
        {
            place.Clearance.ShouldBe(place.Point.DistanceTo(new(1, 1)), Tight);
            place.Clearance.ShouldBe(Math.Min(place.Point.X, place.Point.Y), Tight);
        }
    }

    [Fact]
    public void Between_lens_arcs_of_two_radii_the_valley_is_a_hyperbola() // R - r = difference of the distances
    {
        var roof = RoofCheck.Sound(ChipOutlines.Lens(5, 3, 6));

        var valley = roof.Valleys.ShouldHaveSingleItem();
        valley.Kind.ShouldBe(ValleyKind.Hyperbola);
        foreach (
            var (point, clearance) in Places(valley).Select(place => (place.Point, place.Clearance))
        )
        {
            (point.DistanceTo(new(0, 0)) - point.DistanceTo(new(6, 0))).ShouldBe(2, Tight);
            point.DistanceTo(new(0, 0)).ShouldBe(5 - clearance, Tight);
        }
    }

    [Fact]
    public void Between_two_hollow_arcs_of_one_radius_the_valley_is_a_line() =>
        RoofCheck.Sound(Shapes.Gap).Valleys.ShouldAllBe(valley => valley.Kind == ValleyKind.Line);

    [Fact]
    public void Between_hollow_arcs_of_two_radii_the_valley_is_a_hyperbola()
    {
        // A square with two hollow sides, of radii 5 and 13.
        var roof = RoofCheck.Sound(
            new(
                new Vertex(new(0, 0)),
                new(new(10, 0), -BulgeOver(10, 13)),
                new(new(10, 10)),
                new(new(0, 10), -BulgeOver(10, 5.5))
            )
        );
        var (right, left) = (roof.Outline.SegmentAt(1), roof.Outline.SegmentAt(3));

        var valley = roof.Valleys.Single(valley => valley.Kind == ValleyKind.Hyperbola);
        foreach (var point in Places(valley).Select(place => place.Point))
            (point.DistanceTo(right.Centre) - point.DistanceTo(left.Centre)).ShouldBe(
                13 - 5.5,
                Tight
            );
    }

    [Fact]
    public void Between_a_round_hole_and_a_round_outline_the_valley_is_an_ellipse() // R + r = sum of the distances
    {
        var roof = ChipOutlines.Ring(Shapes.Circle(10), Shapes.Circle(3, 2));
        RoofCheck.ShouldBeSound(roof, "a ring off its middle");

        roof.Valleys.ShouldAllBe(valley => valley.Kind == ValleyKind.Ellipse);
        foreach (var point in roof.Valleys.SelectMany(Places).Select(place => place.Point))
            (point.DistanceTo(new(0, 0)) + point.DistanceTo(new(2, 0))).ShouldBe(13, Tight);
        // Widest on the far side of the hole: from 10 to 1 on the left.
        roof.Clearance.ShouldBe(4.5, Tight);
        roof.Deepest.DistanceTo(new(-5.5, 0)).ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void Between_a_round_outline_and_a_hole_s_corner_the_valley_is_an_ellipse() // R = sum of the distances
    {
        var hole = Contour.Polygon(new(-3, 0), new(0, -2), new(3, 0), new(0, 2));
        var roof = ChipOutlines.Ring(Shapes.Circle(10), hole);
        RoofCheck.ShouldBeSound(roof, "a diamond in a circle");

        var ellipses = roof.Valleys.Where(valley => valley.Kind == ValleyKind.Ellipse).ToArray();
        ellipses.ShouldNotBeEmpty();
        foreach (var point in ellipses.SelectMany(Places).Select(place => place.Point))
        {
            var corner = hole.Vertices.Min(vertex => vertex.Point.DistanceTo(point));
            (point.DistanceTo(Point.Origin) + corner).ShouldBe(10, Tight);
        }
        // Straight sides of the hole against the arc.
        roof.Valleys.Count(valley => valley.Kind == ValleyKind.Parabola)
            .ShouldBeGreaterThanOrEqualTo(4);
    }

    [Fact]
    public void Between_a_hollow_side_and_a_corner_the_valley_is_a_hyperbola() // r = difference of the distances
    {
        // A channel whose floor has a corner that points in, under a hollow roof of radius 20.
        var roof = RoofCheck.Sound(
            new(
                new Vertex(new(-10, 0)),
                new(new(0, 3)),
                new(new(10, 0)),
                new(new(10, 10), -BulgeOver(20, 20)),
                new(new(-10, 10))
            )
        );
        var centre = roof.Outline.SegmentAt(3).Centre;

        var hyperbolas = roof
            .Valleys.Where(valley => valley.Kind == ValleyKind.Hyperbola)
            .ToArray();
        hyperbolas.ShouldNotBeEmpty();
        foreach (var point in hyperbolas.SelectMany(Places).Select(place => place.Point))
            (point.DistanceTo(centre) - point.DistanceTo(new(0, 3))).ShouldBe(20, Tight);
    }

    [Fact]
    public void Between_arcs_about_one_centre_the_valley_is_an_arc()
    {
        var roof = RoofCheck.Sound(
            new(
                new Vertex(new(10, 0), Math.Tan(Math.PI / 8)),
                new(new(0, 10)),
                new(new(0, 7), -Math.Tan(Math.PI / 8)),
                new(new(7, 0))
            )
        );

        var arc = roof.Valleys.Single(valley => valley.Kind == ValleyKind.Arc);
        arc.IsLevel.ShouldBeTrue();
        roof.DeepestLines.ShouldBe([arc]);
        foreach (var place in Places(arc))
            place.Point.DistanceTo(Point.Origin).ShouldBe(8.5, Tight);
    }

    [Fact]
    public void Walls_break_where_another_wall_begins_to_meet_them()
    {
        var roof = RoofCheck.Sound(Contour.Rectangle(new(0, 0), new(10, 4)));

        roof.Walls.Select(wall => (wall.Ring, wall.Index, wall.IsCorner))
            .ShouldBe([(0, 0, false), (0, 1, false), (0, 2, false), (0, 3, false)]);
        // The corner's valley goes 2 mm along the long side, and half-way along the short one.
        roof.Walls[0].Breaks.ShouldBe([0, 0.2, 0.8, 1], Tight);
        roof.Walls[1].Breaks.ShouldBe([0, 0.5, 1], Tight);
        roof.Walls[0].Area.ShouldBe(6 * 2 + 2 * 2, Tight);
        roof.Walls[1].Area.ShouldBe(2 * 2, Tight);
        var fall = roof.Walls[0].FallAt(0.1);
        fall.Edge.ShouldBe(new(1, 0));
        fall.Inward.ShouldBe(new(0, 1));
        fall.Length.ShouldBe(1, Tight);
        Should.Throw<ArgumentOutOfRangeException>(() => roof.Walls[0].FallAt(1.1));
        Should.Throw<ArgumentOutOfRangeException>(() => roof.Valleys[0].PlaceAt(-0.1));
    }

    [Fact]
    public void The_wall_of_a_corner_comes_before_that_of_the_side_that_starts_there()
    {
        var walls = RoofCheck.Sound(Shapes.LShape).Walls;

        walls
            .Select(wall => (wall.Index, wall.IsCorner))
            .ShouldBe([
                (0, false),
                (1, false),
                (2, false),
                (3, true),
                (3, false),
                (4, false),
                (5, false),
            ]);
        walls[3].FallAt(0.5).Edge.ShouldBe(new(1, 1));
        walls[3].FallAt(0.5).Inward.X.ShouldBe(-Math.Sqrt(0.5), Tight);
        (walls[3].FallAt(0).Inward - new Vector(0, -1)).Length.ShouldBeLessThan(Tight);
    }

    private static double BulgeOver(double chord, double radius) =>
        Math.Tan(Math.Asin(chord / 2 / radius) / 2);

    private static IEnumerable<ValleyPlace> Places(Valley valley) =>
        Enumerable.Range(0, 33).Select(i => valley.PlaceAt(i / 32.0));
}
