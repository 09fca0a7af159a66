using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Chips;

/// <summary>
/// Depths and volumes of chips that others have published, or that follow from a formula named beside the check. Walls go
/// down at 65° throughout, the common practice.
/// </summary>
public class PublishedSolidSpecs
{
    private const double Tight = 1e-12;

    /// <summary>Trigonometric tables.</summary>
    private const double Tan65 = 2.14450692050956;

    [Fact]
    public void A_3_4_5_chip_has_depth_volume_and_wall_area()
    {
        var chip = Walled(ChipOutlines.Triangle(3, 4, 5));

        chip.Clearance.ShouldBe(1, Tight); // Euclid IV.4; MathWorld, Inradius
        chip.Depth.ShouldBe(2.14450692050956, Tight);
        chip.Volume.ShouldBe(4.28901384101912, Tight); // area × depth / 3, as any pyramid, Euclid XII.7
        chip.SurfaceArea.ShouldBe(14.1972094989150, 1e-11); // area / cos 65°
        chip.Area.ShouldBe(6, Tight);
    }

    [Theory]
    [InlineData(5, 12, 13, 2)] // r = A / s, MathWorld, Inradius
    [InlineData(13, 14, 15, 4)] // Heron
    [InlineData(1, 1, 1, 0.288675134594813)] // √3 / 6
    public void Triangles_are_as_deep_as_their_incircle(double a, double b, double c, double r)
    {
        var chip = Walled(ChipOutlines.Triangle(a, b, c));

        chip.Clearance.ShouldBe(r, Tight);
        chip.Depth.ShouldBe(r * Tan65, 1e-11);
        chip.Volume.ShouldBe(chip.Area * r * Tan65 / 3, 1e-10);
    }

    [Fact]
    public void The_deepest_point_of_a_triangle_is_its_incentre() // Aizu Online Judge CGL_7_B, sample (from memory)
    {
        var roof = Roof.Over(Contour.Polygon(new(1, -2), new(3, 2), new(-2, 0)));

        roof.Deepest.DistanceTo(new(0.539079438982094, -0.264373927114484)).ShouldBeLessThan(Tight);
        roof.Clearance.ShouldBe(1.18845545916395, Tight);
    }

    [Fact]
    public void An_equilateral_chip_with_sides_of_10_has_depth_and_volume()
    {
        var chip = Walled(ChipOutlines.Equilateral(10));

        chip.Depth.ShouldBe(6.19065823917605, 1e-11); // √3/6 × 10 × tan 65°
        chip.Volume.ShouldBe(89.3544550212316, 1e-10);
    }

    [Fact]
    public void A_square_chip_of_6_is_a_pyramid()
    {
        var chip = Walled(Shapes.Square(6));

        chip.Depth.ShouldBe(6.43352076152868, 1e-11); // 3 tan 65°
        chip.Volume.ShouldBe(77.2022491383441, 1e-10); // 36 × depth / 3
        chip.Roof.DeepestLines.ShouldBeEmpty();
        chip.Roof.Moment.ShouldBe(36, 1e-11);
    }

    [Fact]
    public void A_rectangle_of_10_by_4_has_a_bottom_line_of_6() // hip roof of equal slope
    {
        var chip = Walled(Contour.Rectangle(new(0, 0), new(10, 4)));

        chip.Depth.ShouldBe(4.28901384101912, 1e-11);
        chip.Volume.ShouldBe(74.3429065776647, 1e-10);
        var line = chip.Roof.DeepestLines.ShouldHaveSingleItem();
        // The middle of the bottom line is the middle of the rectangle.
        chip.Deepest.DistanceTo(new(5, 2)).ShouldBeLessThan(Tight);
        line.Start.Place.DistanceTo(line.End.Place).ShouldBe(6, Tight);
        line.Start.Place.Y.ShouldBe(2, Tight);
        line.End.Place.Y.ShouldBe(2, Tight);
    }

    [Theory]
    [InlineData(10, 4)]
    [InlineData(3, 3)]
    [InlineData(100, 0.5)]
    [InlineData(7.3, 7.2)]
    public void A_rectangle_holds_what_the_hip_roof_formula_says(double a, double b) // tan × b² (3a - b) / 12: prism and pyramid
    {
        var chip = Walled(Contour.Rectangle(new(0, 0), new(a, b)));

        chip.Volume.ShouldBe(Tan65 * b * b * (3 * a - b) / 12, 1e-12 * a * a * a);
    }

    [Theory]
    [InlineData(5, 0.688190960235587)] // MathWorld, Regular Polygon: r = a / (2 tan(π/n))
    [InlineData(6, 0.866025403784439)]
    [InlineData(9, 1.37373870972731)]
    public void A_regular_polygon_with_sides_of_1_is_as_deep_as_its_incircle(int corners, double r)
    {
        var chip = Walled(ChipOutlines.Regular(corners, 1));

        chip.Clearance.ShouldBe(r, Tight);
        chip.Volume.ShouldBe(chip.Area * r * Tan65 / 3, 1e-11); // a pyramid
        chip.Deepest.DistanceTo(Point.Origin).ShouldBeLessThan(Tight);
    }

    [Fact]
    public void A_rhombus_with_diagonals_6_and_8_is_2_4_from_its_sides() // r = pq / (2 √(p² + q²))
    {
        var chip = Walled(Contour.Polygon(new(3, 0), new(0, 4), new(-3, 0), new(0, -4)));

        chip.Clearance.ShouldBe(2.4, Tight);
        chip.Volume.ShouldBe(24 * 2.4 * Tan65 / 3, 1e-11);
    }

    /// <summary>
    /// The greatest distance is that of the circle that touches both outer sides and the corner that points in: t = (1 - t) √2. A roof of
    /// planes only, the straight skeleton (Aichholzer and Aurenhammer), rises to 0.5 and holds 2/3: it carries the planes of the inner sides on past
    /// the corner, where this one goes round it as a cone, and so reaches deeper.
    /// </summary>
    [Fact]
    public void An_L_is_as_deep_as_its_true_distance_and_not_as_its_straight_skeleton()
    {
        var chip = Walled(Shapes.LShape);

        chip.Clearance.ShouldBe(0.585786437626905, Tight);
        var t = 2 - Math.Sqrt(2);
        chip.Deepest.DistanceTo(new(t, t)).ShouldBeLessThan(Tight);
        chip.Clearance.ShouldBeGreaterThan(0.5);
        chip.Volume.ShouldBeGreaterThan(2.0 / 3 * Tan65);
    }

    /// <summary>
    /// Each half, from the diagonal on, wall by wall as ∫ r²/2 along its foot: the outer side is r = x up to t, then the parabola
    /// r = (1 + u²)/2 with u = 1 - x from q = √2 - 1 to 0, then the ridge 1/2, then the corner. The cone is ∫ r³/3 with
    /// r = 1/(1 + cos ψ), or with τ = tan(ψ/2), up to q again, ∫ (1 + τ²)²/12 dτ.
    /// </summary>
    [Fact]
    public void An_L_holds_what_its_walls_add_up_to()
    {
        var (t, q) = (2 - Math.Sqrt(2), Math.Sqrt(2) - 1);
        var square = q + 2 * q * q * q / 3 + Math.Pow(q, 5) / 5;
        var ridge = 0.5 * 0.5 / 2 * 0.5;
        var corner = 0.5 * 0.5 * 0.5 / 6;
        var half =
            t * t * t / 6
            + square / 8
            + ridge
            + corner // outer side
            + 2 * corner // end
            + ridge
            + corner // inner side
            + square / 12; // cone

        Roof.Over(Shapes.LShape).Moment.ShouldBe(2 * half, 1e-11);
    }

    [Fact]
    public void A_round_chip_is_a_cone() // cone formulas
    {
        var chip = Walled(Shapes.Circle(1));

        chip.Depth.ShouldBe(2.14450692050956, Tight);
        chip.Volume.ShouldBe(2.24572239568177, 1e-11);
        chip.SurfaceArea.ShouldBe(7.43364151054443, 1e-11);
        chip.Deepest.DistanceTo(Point.Origin).ShouldBeLessThan(Tight);
        chip.Roof.Valleys.ShouldBeEmpty();
        chip.Roof.DeepestLines.ShouldBeEmpty();
    }

    [Fact]
    public void A_vesica_is_as_deep_as_half_its_width() =>
        Walled(ChipOutlines.Lens(1, 1, 1)).Depth.ShouldBe(1.07225346025478, Tight); // 1/2 × tan 65°

    [Fact]
    public void A_petal_of_the_six_petal_rosette_has_depth_and_volume()
    {
        var chip = Walled(Shapes.Lens(1, 1));

        chip.Depth.ShouldBe(0.287309448756745, Tight); // half width × tan 65°
        chip.Volume.ShouldBe(0.0205274752964596, Tight); // areas of lenses of radii 1 - t added up, by numerical quadrature
        Walled(Shapes.Lens(25, 25)).Depth.ShouldBe(7.18273621891863, 1e-11); // the same, scaled
    }

    [Fact]
    public void The_largest_circle_in_a_lens_is_the_contest_s() // Codeforces Gym 102215 L, sample 1
    {
        var chip = Walled(ChipOutlines.Lens(5, 5, 6));

        chip.Clearance.ShouldBe(2, Tight);
        chip.Deepest.DistanceTo(new(3, 0)).ShouldBeLessThan(1e-11);
        chip.Depth.ShouldBe(4.28901384101912, 1e-11);
    }

    /// <summary>The medial axis of a lens of equal arcs is the line that joins its tips; x off the middle the distance is R - √(d²/4 + x²).</summary>
    [Fact]
    public void A_lens_falls_to_nothing_in_its_tips()
    {
        var roof = Roof.Over(ChipOutlines.Lens(5, 5, 6));

        var valley = roof.Valleys.ShouldHaveSingleItem();
        valley.Kind.ShouldBe(ValleyKind.Line);
        valley.Start.Clearance.ShouldBe(0, Tight);
        valley.End.Clearance.ShouldBe(0, Tight);
        foreach (var share in (double[])[0.1, 0.25, 0.5, 0.9])
        {
            var (point, clearance) = (valley.PlaceAt(share).Point, valley.PlaceAt(share).Clearance);
            point.X.ShouldBe(3, Tight);
            clearance.ShouldBe(5 - Math.Sqrt(9 + point.Y * point.Y), Tight);
        }
    }

    /// <summary>The centre of a curve of constant width 1 is 1/√3 from its corners, and so 1 - 1/√3 from the arcs opposite.</summary>
    [Fact]
    public void A_Reuleaux_chip_is_deepest_in_its_centre()
    {
        var roof = Roof.Over(ChipOutlines.Reuleaux(1));

        roof.Clearance.ShouldBe(1 - 1 / Math.Sqrt(3), Tight);
        roof.Deepest.DistanceTo(new(0.5, Math.Sqrt(3) / 6)).ShouldBeLessThan(Tight);
        roof.Valleys.Count.ShouldBe(3);
        roof.Valleys.ShouldAllBe(valley => valley.Kind == ValleyKind.Line);
    }

    [Fact]
    public void The_valley_of_a_semicircle_is_a_parabola() // equidistance from diameter and arc: y = (1 - x²) / 2
    {
        var chip = Walled(ChipOutlines.Semicircle(1));

        chip.Depth.ShouldBe(1.07225346025478, Tight);
        chip.Deepest.DistanceTo(new(0, 0.5)).ShouldBeLessThan(Tight);
        var valley = chip.Roof.Valleys.ShouldHaveSingleItem();
        valley.Kind.ShouldBe(ValleyKind.Parabola);
        for (var share = 0.0; share <= 1; share += 1 / 64.0)
        {
            var (point, clearance) = (valley.PlaceAt(share).Point, valley.PlaceAt(share).Clearance);
            point.Y.ShouldBe((1 - point.X * point.X) / 2, Tight);
            clearance.ShouldBe(point.Y, Tight);
        }
    }

    [Theory]
    [InlineData(90, 0.414213562373095)] // sin(a/2) / (1 + sin(a/2)): tangent circle in a sector
    [InlineData(60, 0.333333333333333)]
    [InlineData(45, 0.276768653914155)]
    [InlineData(30, 0.205604646759568)]
    public void A_sector_is_as_deep_as_its_tangent_circle(double degrees, double r) =>
        Roof.Over(ChipOutlines.Sector(1, degrees)).Clearance.ShouldBe(r, Tight);

    [Fact]
    public void The_chip_with_three_cusps_between_three_circles_has_a_depth()
    {
        var chip = Walled(Shapes.Gap);

        chip.Clearance.ShouldBe(0.154700538379252, Tight); // 1 / sin 60° - 1, OEIS A246724
        chip.Depth.ShouldBe(0.331756375160859, Tight);
    }

    [Fact]
    public void The_gap_among_four_circles_is_as_deep_as_the_circle_between_them() =>
        Roof.Over(ChipOutlines.GapAmongFour).Clearance.ShouldBe(0.414213562373095, Tight); // √2 - 1, OEIS A188582

    /// <summary>Half the width of the ring all along the circle in its middle; Pappus: the section, a triangle, times the way of its centre of gravity.</summary>
    [Fact]
    public void A_ring_has_a_level_valley()
    {
        var roof = ChipOutlines.Ring(Shapes.Circle(5, 1, 2), Shapes.Circle(3, 1, 2));

        roof.Clearance.ShouldBe(1, Tight);
        roof.DeepestLines.Count.ShouldBe(roof.Valleys.Count);
        roof.Valleys.ShouldNotBeEmpty();
        foreach (var valley in roof.Valleys)
        {
            valley.Kind.ShouldBe(ValleyKind.Arc);
            valley.IsLevel.ShouldBeTrue();
            foreach (var share in (double[])[0, 0.3, 1])
                valley.PlaceAt(share).Point.DistanceTo(new(1, 2)).ShouldBe(4, Tight);
        }
        roof.Moment.ShouldBe(2 * 1 / 2.0 * 2 * Math.PI * 4, 1e-10);
    }

    [Fact]
    public void A_groove_s_included_angle_is_what_its_walls_leave() // 180° - 2 × 65° = 50°; w / 2 × tan 65°
    {
        var chip = Walled(Contour.Rectangle(new(0, 0), new(1000, 1)));

        chip.Depth.ShouldBe(1.07225346025478, Tight);
        (2 * Math.Atan(0.5 / chip.Depth) * 180 / Math.PI).ShouldBe(50, Tight);
    }

    private static WalledChip Walled(Contour outline) =>
        ChipSolid.Walled(RoofCheck.Sound(outline), Angle.FromDegrees(65));
}
