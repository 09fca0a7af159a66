using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using Point = PatternGen.Geometry.Point;

namespace PatternGen.Tests.Chips;

public class GrooveSpecs
{
    private const double Tan65 = 2.14450692050956;

    private static readonly Angle Wall65 = Angle.FromDegrees(65);

    private static readonly Chain Straight = Chain.Line(new(1, 2), new(13, 7)); // 13 long

    /// <summary>A line, then an arc to the left, then one to the right, all tangent to each other.</summary>
    private static readonly Chain Smooth = new(
        new Vertex(0, 0),
        new Vertex(10, 0, Math.Sqrt(2) - 1),
        new Vertex(15, 5, 1 - Math.Sqrt(2)),
        new Vertex(20, 10)
    );

    private static readonly Chain Bent = new(
        new Vertex(0, 0),
        new Vertex(12, 0),
        new Vertex(18, 8),
        new Vertex(30, 8)
    );

    public static TheoryData<string> Paths => ["straight", "smooth", "bent"];

    [Fact]
    public void A_groove_1_mm_wide_is_1_07_mm_deep_at_65_degrees()
    {
        // Width w gives depth w/2 × tan 65 = 1.07225346025478 w; elementary, in 40-digit arithmetic.
        var groove = Groove.Along(Straight, 1, Wall65);

        groove.Depth.ShouldBe(1.07225346025478, 1e-13);
        groove.DepthAlong(0).ShouldBe(groove.Depth);
        groove.DepthAt(new(7, 4.5)).ShouldBe(groove.Depth, 1e-12);
        Groove.Along(Straight, 2.5, Wall65).Depth.ShouldBe(2.5 * 1.07225346025478, 1e-12);
    }

    [Fact]
    public void A_straight_groove_is_a_prism()
    {
        // Half of width × depth, for each mm.
        var groove = Groove.Along(Straight, 2, Wall65);
        groove.Volume.ShouldBe(13 * 2 * (1 * Tan65) / 2, 1e-11);
    }

    [Fact]
    public void A_cut_by_a_bit_has_its_walls()
    {
        var cut = new LineCut(Straight, 2);
        cut.CutWith(VBit.Of(60)).Depth.ShouldBe(Math.Sqrt(3), 1e-12);
        cut.CutWith(Knife.Held()).Depth.ShouldBe(Tan65, 1e-12);
        cut.CutWith(Knife.Held().NoDeeperThan(1)).WallAngle.Degrees.ShouldBe(45, 1e-9);
    }

    [Fact]
    public void A_tapering_groove_has_depth_in_proportion_to_the_way_from_its_tips()
    {
        var groove = Groove.Along(Straight, 2, Wall65, GrooveProfile.Tapering);

        foreach (var (along, share) in new[] { (0, 0), (1.3, 0.2), (6.5, 1), (9.75, 0.5), (13, 0) })
        {
            groove.DepthAlong(along).ShouldBe(share * Tan65, 1e-12);
            groove.DepthAt(Straight.PointAt(along)).ShouldBe(share * Tan65, 1e-12);
        }
        groove.Depth.ShouldBe(Tan65, 1e-12);
    }

    [Fact]
    public void A_straight_tapering_groove_is_the_chip_between_the_tangents_of_its_middle_circle()
    {
        // Two tips T = 13/2 from the middle of a circle of radius 1. With the tangents' length t = √(T² - r²) and the angle
        // α = asin(r / T): four pyramids over right triangles, t r/2 × r tan/3 each, and, between the feet of the
        // tangents, sectors of a cone of 4α in all.
        const double reach = 6.5;
        var tangent = Math.Sqrt(reach * reach - 1);
        var alpha = Math.Asin(1 / reach);
        var groove = Groove.Along(Straight, 2, Wall65, GrooveProfile.Tapering);

        groove.Volume.ShouldBe((4 * tangent / 6 + 4 * alpha / 6) * Tan65, 1e-11);
    }

    [Fact]
    public void Walls_of_a_taper_have_the_slope_of_all_walls()
    {
        // Across the wall of a taper, not across its path, the depth grows by the tangent for each mm.
        var groove = Groove.Along(
            Chain.Line(new(0, 0), new(20, 0)),
            8,
            Wall65,
            GrooveProfile.Tapering
        );
        // The edge is the tangent from the tip to the circle of radius 4 about (10, 0): sin α = 0.4.
        var (sin, cos) = (0.4, Math.Sqrt(1 - 0.16));
        Point foot = new(5 * cos, 5 * sin);
        Vector inwards = new(sin, -cos);

        groove.DepthAt(foot).ShouldBe(0, 1e-9);
        groove.DepthAt(foot + inwards * 0.5).ShouldBe(0.5 * Tan65, 1e-9);
        groove.DepthAt(foot + inwards * 1.5).ShouldBe(1.5 * Tan65, 1e-9);
        groove.DepthAt(foot - inwards * 0.01).ShouldBe(0);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Depth_is_that_of_the_nearest_cones(string name)
    {
        var path = PathOf(name);
        var random = new Random(7);
        foreach (var profile in Profiles())
        {
            var groove = Groove.Along(path, 3, Wall65, profile);
            const int cones = 20_000;
            var step = path.Length / cones;
            var places = Enumerable.Range(0, cones + 1).Select(i => i * step).ToArray();
            var centres = places.Select(path.PointAt).ToArray();
            for (var n = 0; n < 60; n++)
            {
                var at = path.PointAt(random.NextDouble() * path.Length);
                Point point = new(
                    at.X + 4 * random.NextDouble() - 2,
                    at.Y + 4 * random.NextDouble() - 2
                );
                double clearance = 0;
                for (var i = 0; i < centres.Length; i++)
                    clearance = Math.Max(
                        clearance,
                        1.5 * Share(profile, places[i], path.Length) - centres[i].DistanceTo(point)
                    );
                // Between two cones the clearance grows by at most the step.
                (groove.DepthAt(point) / Tan65).ShouldBeInRange(
                    clearance - 1e-9,
                    clearance + 2 * step,
                    $"{name}, seed 7, {point}"
                );
            }
        }
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_constant_groove_is_the_flat_ended_buffer_of_its_path(string name)
    {
        var path = PathOf(name);
        var groove = Groove.Along(path, 3, Wall65);
        var line = new LineString([
            .. path.Segments.SelectMany(side => Geometry.Flat.Line(side, 1e-7).Coordinates),
        ]);
        var area = line.Buffer(1.5, new BufferParameters(400) { EndCapStyle = EndCapStyle.Flat });
        var edge = area.Boundary;
        var random = new Random(11);
        for (var n = 0; n < 300; n++)
        {
            var at = path.PointAt(random.NextDouble() * path.Length);
            Point point = new(
                at.X + 6 * random.NextDouble() - 3,
                at.Y + 6 * random.NextDouble() - 3
            );
            var judged = new NetTopologySuite.Geometries.Point(point.X, point.Y);
            if (edge.Distance(judged) < 1e-3)
                continue;
            var expected = area.Contains(judged) ? (1.5 - line.Distance(judged)) * Tan65 : 0;
            groove.DepthAt(point).ShouldBe(expected, 1e-5, $"{name}, seed 11, {point}");
        }
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Volume_is_the_sum_of_depths_over_a_fine_grid(string name)
    {
        var path = PathOf(name);
        foreach (var profile in Profiles().Append(GrooveProfile.Constant))
        {
            var groove = Groove.Along(path, 2, Wall65, profile);
            var box = path.Extents.Grown(1.2);
            const double cell = 0.05;
            double sum = 0;
            for (var x = box.Min.X; x < box.Max.X; x += cell)
            for (var y = box.Min.Y; y < box.Max.Y; y += cell)
                sum += groove.DepthAt(new(x + cell / 2, y + cell / 2));
            sum *= cell * cell;
            groove.Volume.ShouldBe(sum, sum * 1e-3, $"{name} {profile}");
        }
    }

    [Fact]
    public void A_ring_has_no_ends()
    {
        // A circle of radius 5: Pappus, 2π × 5 × the section's area.
        var ring = new Chain(new Vertex(5, 0, 1), new Vertex(-5, 0, 1), new Vertex(5, 0));
        var groove = Groove.Along(ring, 2, Angle.FromDegrees(45));

        groove.Volume.ShouldBe(Math.Tau * 5, 1e-9);
        foreach (var (x, y) in new[] { (5.5, 0.0), (5.5, 0.01), (5.5, -0.01), (-4.5, 0) })
            groove.DepthAt(new(x, y)).ShouldBe(1 - Math.Abs(double.Hypot(x, y) - 5), 1e-9);
    }

    [Fact]
    public void A_flat_arc_is_as_good_as_a_line()
    {
        // An arc of 20 mm that rises by 1e-5 mm, of a radius of 5 km: nothing of it is more than 1e-5 from the line.
        var line = Chain.Line(new(0, 0), new(20, 0));
        var arc = Chain.Of(Segment.WithSagitta(new(0, 0), new(20, 0), 1e-5));
        var random = new Random(3);
        for (var n = 0; n < 200; n++)
        {
            Point point = new(20 * random.NextDouble(), 3 * random.NextDouble() - 1.5);
            foreach (var profile in Profiles())
                Groove
                    .Along(arc, 3, Wall65, profile)
                    .DepthAt(point)
                    .ShouldBe(Groove.Along(line, 3, Wall65, profile).DepthAt(point), 3e-5);
        }
    }

    [Fact]
    public void A_taper_over_a_length_leaves_full_width_between()
    {
        var profile = GrooveProfile.TaperingOver(10);

        profile.ShareAt(5, 30).ShouldBe(0.5);
        profile.ShareAt(15, 30).ShouldBe(1);
        profile.ShareAt(29, 30).ShouldBe(0.1, 1e-12);
        profile.ShareAt(31, 30).ShouldBe(0);
        // On a path too short for two tapers they meet in the middle.
        profile.ShareAt(3, 12).ShouldBe(0.5);
        profile.ShareAt(6, 12).ShouldBe(1);
        GrooveProfile.Constant.ShareAt(0, 30).ShouldBe(1);
        default(GrooveProfile).ShouldBe(GrooveProfile.Constant);
    }

    [Fact]
    public void A_groove_too_wide_for_its_taper_is_refused()
    {
        var trouble = Should.Throw<PatternException>(() =>
            LineCut.Tapering(Chain.Line(new(0, 0), new(3, 0)), 4)
        );
        trouble.Message.ShouldContain("A groove 4 mm wide can't taper to a point over 1.5 mm");
        trouble.Remedies[0].ShouldBe("a groove less than 3 mm wide");
        _ = LineCut.Tapering(Chain.Line(new(0, 0), new(3, 0)), 2.99);
        Should.Throw<PatternException>(() => LineCut.Tapering(Straight, 4, over: 2));
        Should.Throw<ArgumentOutOfRangeException>(() => LineCut.Tapering(Straight, 4, over: 0));
        Should.Throw<ArgumentOutOfRangeException>(() => Groove.Along(Straight, 0, Wall65));
        Should.Throw<ArgumentOutOfRangeException>(() =>
            Groove.Along(Straight, 1, Angle.FromDegrees(90))
        );
    }

    private static GrooveProfile[] Profiles() =>
        [GrooveProfile.Tapering, GrooveProfile.TaperingOver(4)];

    /// <summary>The profile once more: straight up from either end to the full width.</summary>
    private static double Share(GrooveProfile profile, double along, double length)
    {
        var taper = profile == GrooveProfile.Tapering ? length / 2 : 4;
        return Math.Min(1, Math.Min(along, length - along) / taper);
    }

    private static Chain PathOf(string name) =>
        name switch
        {
            "straight" => Straight,
            "smooth" => Smooth,
            _ => Bent,
        };
}
