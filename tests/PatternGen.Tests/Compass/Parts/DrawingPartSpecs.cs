using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Compass.Parts;

public class DrawingPartSpecs
{
    private const double Radius = 40;

    [Fact]
    public void Seven_circles_have_24_parts_in_4_orbits()
    {
        var drawing = Figures.Of(Figures.Petals(6));

        drawing.Parts.Count.ShouldBe(24);
        drawing.OrbitCount.ShouldBe(4);
        drawing.Parts.Select(part => part.Number).ShouldBe(Enumerable.Range(1, 24));
        foreach (var orbit in (int[])[1, 2, 3, 4])
        {
            var parts = drawing.OrbitParts(orbit);
            parts.Count.ShouldBe(6);
            parts.ShouldAllBe(part => part.Orbit == orbit && part.Ring == orbit);
            parts.Select(part => part.CentroidAngle.Degrees).ShouldBeInOrder();
            // Six apart by 60 degrees.
            for (var i = 1; i < 6; i++)
                (parts[i].CentroidAngle - parts[0].CentroidAngle).Degrees.ShouldBe(60 * i, 1e-6);
        }
    }

    /// <summary>Twice the circular segment of 60 degrees, (π/3 - √3/2) R² (MathWorld, Circular Segment); tips by Euclid III.32.</summary>
    [Fact]
    public void A_petal_of_six_has_two_sides_and_two_tips_of_60_degrees()
    {
        var petal = Figures.Of(Figures.Petals(6)).OrbitParts(1)[0];

        petal.Area.ShouldBe(0.181172147412159 * Radius * Radius, 1e-9);
        petal.Sides.ShouldBe(2);
        petal.TipCount.ShouldBe(2);
        petal.SharpestTip.ShouldNotBeNull().Degrees.ShouldBe(60, 1e-6);
        petal.CentroidAngle.ShouldBe(Angle.Zero);
        petal.Centroid.DistanceTo(Point.Origin).ShouldBe(Radius / 2, 1e-9);
        // Half the width, 2 - √3 radii; the circle found is within 2 % of the largest.
        petal.Clearance.ShouldBeInRange(
            0.98 * 0.133974596215561 * Radius,
            0.133974596215562 * Radius
        );
        petal.Neighbours.Select(part => part.Orbit).ShouldBe([2, 2]);
        petal.Holes.ShouldBeEmpty();
    }

    [Fact]
    public void Gaps_between_petals_meet_in_the_centre_as_sharp_as_can_be()
    {
        var gap = Figures.Of(Figures.Petals(6)).OrbitParts(2)[0];

        // (π - 6 petals) / 6 of the radius squared (elementary).
        gap.Area.ShouldBe(0.342426628186140 * Radius * Radius, 1e-9);
        gap.TipCount.ShouldBe(3);
        gap.SharpestTip.ShouldNotBeNull().Degrees.ShouldBe(0, 1e-3);
    }

    /// <summary>OEIS A090551 (area) and A246724 (largest circle) of the gap among three unit circles that touch.</summary>
    [Fact]
    public void Tangent_circles_leave_a_part_of_three_hollow_sides()
    {
        var height = Math.Sqrt(3);
        var drawing = Figures.Of([
            new Circle(new(-1, 0), 1),
            new Circle(new(1, 0), 1),
            new Circle(new(0, height), 1),
        ]);

        drawing.Parts.Count.ShouldBe(4);
        var gap = drawing.PartAt(new(0, height / 3)).ShouldNotBeNull();
        gap.Area.ShouldBe(0.161254480773981, 1e-9);
        gap.Sides.ShouldBe(3);
        gap.TipCount.ShouldBe(3);
        gap.Clearance.ShouldBeInRange(0.98 * 0.154700538379252, 0.154700538379253);
        gap.Ring.ShouldBe(1);
        gap.CentroidAngle.ShouldBe(Angle.Zero);
    }

    [Fact]
    public void Whole_circles_have_one_side_and_no_tip()
    {
        var drawing = Figures.Of([new Circle(default, 10), new Circle(default, 20)]);

        drawing.Parts.Count.ShouldBe(2);
        drawing.Parts[0].Area.ShouldBe(100 * Math.PI, 1e-9);
        drawing.Parts[0].Ring.ShouldBe(1);
        drawing.Parts[0].Clearance.ShouldBe(10, 0.2);
        var band = drawing.Parts[1];
        band.Ring.ShouldBe(2);
        band.Orbit.ShouldBe(2);
        band.Area.ShouldBe(300 * Math.PI, 1e-9);
        band.Sides.ShouldBe(1);
        band.TipCount.ShouldBe(0);
        band.SharpestTip.ShouldBeNull();
        band.Holes.Count.ShouldBe(1);
        band.Clearance.ShouldBeInRange(4.9, 5);
        band.Neighbours.ShouldBe([drawing.Parts[0]]);
    }

    [Fact]
    public void A_half_disc_has_two_sides_and_two_tips()
    {
        var drawing = Figures.Of([new Circle(default, 10), new Segment(new(-10, 0), new(10, 0))]);

        drawing.Parts.Count.ShouldBe(2);
        drawing.OrbitCount.ShouldBe(1);
        drawing.Parts.ShouldAllBe(part => part.Sides == 2 && part.TipCount == 2);
        drawing.Parts[0].SharpestTip.ShouldNotBeNull().Degrees.ShouldBe(90, 1e-6);
        drawing.Parts[0].CentroidAngle.Degrees.ShouldBe(90, 1e-9);
    }

    [Fact]
    public void Inward_corners_are_no_tips()
    {
        var shape = Shapes.LShape;
        var part = Figures
            .Of(shape.Segments.Select(segment => new Curve(segment)))
            .Parts.ShouldHaveSingleItem();

        part.Sides.ShouldBe(6);
        part.TipCount.ShouldBe(5);
        part.Area.ShouldBe(3, 1e-12);
    }

    [Fact]
    public void Numbers_do_not_depend_on_the_order_of_drawing()
    {
        foreach (var n in (int[])[3, 4, 6, 7, 12])
        {
            var curves = Figures.Petals(n);
            var drawn = Figures.Of(curves);
            new Random(5).Shuffle(curves);
            var shuffled = Figures.Of(curves);

            shuffled.Parts.Count.ShouldBe(drawn.Parts.Count);
            for (var i = 0; i < drawn.Parts.Count; i++)
            {
                var (one, other) = (drawn.Parts[i], shuffled.Parts[i]);
                one.Centroid.DistanceTo(other.Centroid).ShouldBeLessThan(1e-6);
                other.Area.ShouldBe(one.Area, 1e-6);
                (other.Orbit, other.Ring).ShouldBe((one.Orbit, one.Ring));
                other.Sides.ShouldBe(one.Sides);
            }
        }
    }

    [Fact]
    public void Every_part_has_a_place_inside_with_the_clearance_that_it_states()
    {
        foreach (var n in (int[])[3, 5, 6, 8, 12])
        foreach (var part in Figures.Of(Figures.Petals(n)).Parts)
        {
            part.Outline.Locate(part.InsidePoint).ShouldBe(Containment.Inside);
            part.Outline.DistanceTo(part.InsidePoint).ShouldBe(part.Clearance, 1e-6);
        }
    }

    [Fact]
    public void Parts_of_an_orbit_are_congruent_and_fill_the_figure()
    {
        foreach (var n in (int[])[3, 4, 5, 6, 9, 12])
        {
            var drawing = Figures.Of(Figures.Petals(n));
            for (var orbit = 1; orbit <= drawing.OrbitCount; orbit++)
            {
                var parts = drawing.OrbitParts(orbit);
                (2 * n % parts.Count).ShouldBe(0);
                parts.ShouldAllBe(part =>
                    Math.Abs(part.Area - parts[0].Area) < 1e-6
                    && Math.Abs(part.Outline.Length - parts[0].Outline.Length) < 1e-6
                    && part.Sides == parts[0].Sides
                    && part.TipCount == parts[0].TipCount
                );
            }
            drawing
                .Parts.Sum(part => part.Area)
                .ShouldBe(drawing.Arrangement.BoundedFaces.Sum(face => face.Area), 1e-6);
        }
    }

    [Fact]
    public void Marks_tell_petals_and_plain_parts()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            pencil.SetRadius(40);
            var rim = pencil.Circle(pencil.Mark(0, 0));
            var tips = pencil.DivideCircle(rim, 6, pencil.MarkOn(rim, Angle.Zero));
            pencil.Circles(tips);
            for (var i = 0; i < 6; i++)
                pencil.MarkPetal(Figures.At(20, i / 6.0));
            pencil.MarkPlain(Figures.At(25, 1.0 / 12));
        });

        drawing.Parts.Count(part => part.IsPetal).ShouldBe(6);
        drawing.Parts.Where(part => part.IsPetal).ShouldAllBe(part => part.Orbit == 1);
        drawing.Parts.Single(part => part.IsPlain).CentroidAngle.Degrees.ShouldBe(30, 1e-6);
    }

    [Fact]
    public void A_point_tells_its_part()
    {
        var drawing = Figures.Of(Figures.Petals(6));

        foreach (var part in drawing.Parts)
            drawing.PartAt(part.InsidePoint).ShouldBeSameAs(part);
        drawing.PartAt(new(200, 0)).ShouldBeNull();
        drawing.PartAt(new(40, 0)).ShouldBeNull();
        Should.Throw<ArgumentOutOfRangeException>(() => drawing.PartAt(new(double.NaN, 0)));
        Should.Throw<ArgumentOutOfRangeException>(() => drawing.OrbitParts(5));
    }

    [Fact]
    public void Lines_that_bound_nothing_have_no_parts()
    {
        var drawing = Figures.Of([new Segment(new(0, 0), new(10, 0))]);

        drawing.Parts.ShouldBeEmpty();
        drawing.OrbitCount.ShouldBe(0);
        $"{drawing.Symmetry}".ShouldBe("D2");
    }

    [Theory]
    [InlineData(3)]
    [InlineData(10)]
    public void A_number_in_a_disc_stands_in_its_middle(double radius)
    {
        var disc = CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(0, 0);
            pencil.SetRadius(radius);
            pencil.Circle(centre);
        });

        disc.Parts.Single().InsidePoint.DistanceTo(Point.Origin).ShouldBeLessThan(1e-9);
    }
}
