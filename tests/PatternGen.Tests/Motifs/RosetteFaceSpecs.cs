namespace PatternGen.Tests.Motifs;

public class RosetteFaceSpecs
{
    public static TheoryData<int> Counts => [3, 4, 5, 6, 7, 8, 9, 12, 13, 17, 24, 36];

    [Theory]
    [MemberData(nameof(Counts))]
    public void Every_family_divides_its_rim_into_the_faces_counted_by_hand(int count)
    {
        foreach (var (name, rosette, faces) in RosetteFamilies.Of(count))
        {
            var arrangement = rosette.Arrangement;
            arrangement.Validate().ShouldBeEmpty(name);
            arrangement.BoundedFaces.Count().ShouldBe(faces, $"{name} of {count}");
        }
    }

    /// <summary>Counted in exact arithmetic: n circles through the middle, centres on a circle of their size, inside that.</summary>
    [Theory]
    [InlineData(1, 12)]
    [InlineData(2, 36)]
    [InlineData(4, 120)]
    public void Overlaid_sixes_have_the_faces_of_the_walk(int sets, int faces)
    {
        var rosette = sets == 1 ? Rosette.Petals(6, 40) : Rosette.Overlaid(sets, 6, 40, centre: 0);

        var arrangement = Arrangement.Of(rosette.Curves);
        arrangement.Validate().ShouldBeEmpty();
        arrangement.BoundedFaces.Count().ShouldBe(faces);
    }

    /// <summary>
    /// With N = sn tips, sides cross in s − 1 rings of N places. Whole: 1 + sN + N nodes and 2sN + N pieces, so (s + 1)N
    /// faces. Stopped: 2(N − n) places where later sides end on others, so 1 + N + 2(N − n) nodes, 3N + 2(N − n) pieces and
    /// 2N faces. A disc adds one.
    /// </summary>
    [Theory]
    [InlineData(2, 4)]
    [InlineData(2, 36)]
    [InlineData(3, 8)]
    [InlineData(4, 6)]
    [InlineData(5, 3)]
    [InlineData(6, 12)]
    public void Any_number_of_overlaid_sets_has_the_faces_counted_by_hand(int sets, int petals)
    {
        var tips = sets * petals;
        FacesOf(PetalCrossing.Whole, 0).ShouldBe((sets + 1) * tips);
        FacesOf(PetalCrossing.Whole, 2).ShouldBe((sets + 1) * tips + 1);
        FacesOf(PetalCrossing.Stopped, 0).ShouldBe(2 * tips);
        FacesOf(PetalCrossing.Stopped, 2).ShouldBe(2 * tips + 1);

        int FacesOf(PetalCrossing crossing, double centre)
        {
            var rosette = Rosette.Overlaid(sets, petals, 40, crossing, centre);
            var arrangement = Arrangement.Of(rosette.Curves);
            arrangement.Validate().ShouldBeEmpty();
            return arrangement.BoundedFaces.Count();
        }
    }

    /// <summary>The six-petal figure: 7 equal circles have 13 points, 36 arcs and 24 regions, of which 6 are petals; by Euler's relation.</summary>
    [Fact]
    public void The_arcs_of_six_petals_belong_to_the_figure_of_seven_circles()
    {
        var rosette = Rosette.Petals(6, 40);
        var rim = rosette.Curves.Single(curve => curve.IsCircle).Circle;
        Circle[] six =
        [
            .. rosette
                .Curves.Where(curve => !curve.IsCircle)
                .Select(arc => new Circle(arc.Segment.Centre, arc.Segment.Radius)),
        ];

        var whole = Arrangement.Of([rim, .. six.Select(circle => (Curve)circle)]);

        whole.Nodes.Count.ShouldBe(13);
        whole.Edges.Count.ShouldBe(36);
        whole.BoundedFaces.Count().ShouldBe(24);
        whole
            .BoundedFaces.Count(face => Math.Abs(face.Area - 0.181172147412159 * 1600) < 1e-9)
            .ShouldBeGreaterThanOrEqualTo(6);
    }

    [Theory]
    [MemberData(nameof(Counts))]
    public void Petals_lie_in_faces_of_their_own_all_of_one_size(int count)
    {
        foreach (var (name, rosette, _) in RosetteFamilies.Of(count))
        {
            var arrangement = rosette.Arrangement;
            var petals = rosette.PetalMarks.Select(mark => arrangement.FaceAt(mark)).ToArray();
            petals.ShouldAllBe(face => face != null && !face.Value.IsOuter, name);
            petals.Distinct().Count().ShouldBe(petals.Length, name);
            petals.Length.ShouldBe(ExpectedPetals(rosette), name);
            // Inner and outer petals differ, so do whole and hidden ones, and leaves are no petals.
            var sizes = petals
                .Select(face => Math.Round(face!.Value.Area / (1e-8 * Radius * Radius)))
                .Distinct()
                .Count();
            sizes.ShouldBeLessThanOrEqualTo(IsOfTwoKinds(rosette, name) ? 2 : 1, name);
        }
    }

    [Fact]
    public void The_plain_centre_is_a_disc_and_stays_ground()
    {
        foreach (var (name, rosette, _) in RosetteFamilies.Of(12))
        {
            var arrangement = rosette.Arrangement;
            if (
                rosette.Centre > 0
                && rosette.Family is not (RosetteFamily.Fan or RosetteFamily.Nested)
            )
                arrangement
                    .FaceAt(rosette.PlainMarks[0])!
                    .Value.Area.ShouldBe(Math.PI * Math.Pow(rosette.Centre / 2, 2), 1e-9, name);
        }
    }

    [Fact]
    public void Round_a_smaller_nested_rosette_a_plain_ring_remains()
    {
        var rosette = Rosette.Nested(Rosette.Rays(12, 40, 15), Rosette.Petals(6, 12));

        var ring = Arrangement.Of(rosette.Curves).FaceAt(rosette.PlainMarks.Single());

        ring!.Value.Area.ShouldBe(Math.PI * (15 * 15 - 12 * 12), 1e-9);
        Rosette.Nested(Rosette.Rays(12, 40, 15), Rosette.Petals(6, 15)).PlainMarks.ShouldBeEmpty();
    }

    [Fact]
    public void A_rosette_in_the_disc_of_a_fan_keeps_its_petals()
    {
        var rosette = Rosette.Nested(Rosette.Fan(12, 40, centre: 20), Rosette.Petals(6, 9));

        rosette.Parts.Count(part => part.IsPetal).ShouldBe(18);
        rosette.Parts.ShouldNotContain(part => part.IsPetal && part.IsPlain);
    }

    [Fact]
    public void What_a_gap_leaves_between_rim_and_polygon_stays_ground()
    {
        var rosette = Rosette.Petals(6, 40).WithinPolygon(4, gap: 2);

        Arrangement
            .Of(rosette.Curves)
            .FaceAt(rosette.PlainMarks.Single())!
            .Value.Area.ShouldBe(84 * 84 - Math.PI * 1600, 1e-8);
        Rosette.Petals(6, 40).WithinPolygon(4).PlainMarks.ShouldBeEmpty();
    }

    /// <summary>Turned by one part, the figure is the same.</summary>
    [Theory]
    [MemberData(nameof(Counts))]
    public void A_rosette_turned_by_one_part_is_the_same(int count)
    {
        foreach (var (name, rosette, _) in RosetteFamilies.Of(count))
            if (rosette.Family is not (RosetteFamily.Fan or RosetteFamily.WithinPolygon))
            {
                var turned = rosette.Curves.Select(curve =>
                    curve.Transformed(Transform.Rotate(360.0 / count))
                );
                Covers(rosette.Curves, turned).ShouldBeTrue(name);
            }
    }

    private const double Radius = RosetteFamilies.Radius;

    private static int ExpectedPetals(Rosette rosette) =>
        rosette.Family switch
        {
            RosetteFamily.Overlaid
            or RosetteFamily.TwoLevel
            or RosetteFamily.Wreathed
            or RosetteFamily.Nested => 2 * rosette.Count,
            _ => rosette.Count,
        };

    private static bool IsOfTwoKinds(Rosette rosette, string name) =>
        rosette.Family is RosetteFamily.TwoLevel or RosetteFamily.Wreathed or RosetteFamily.Nested
        || name == "Overlaid, stopped";

    /// <summary>Each turned curve runs along curves of the figure: its middle, and places near its ends, lie on one.</summary>
    private static bool Covers(IReadOnlyList<Curve> figure, IEnumerable<Curve> turned) =>
        turned.All(curve => Places(curve).All(place => figure.Any(other => IsOn(other, place))));

    private static IEnumerable<Point> Places(Curve curve)
    {
        if (curve.IsCircle)
        {
            var (centre, radius) = (curve.Circle.Centre, curve.Circle.Radius);
            return Enumerable
                .Range(0, 7)
                .Select(i => centre.Polar(radius, Angle.FromDegrees(i * 51.3)));
        }
        return [curve.Segment.Start, curve.Segment.Middle, curve.Segment.End];
    }

    private static bool IsOn(Curve curve, Point place) =>
        curve.IsCircle
            ? Math.Abs(curve.Circle.Centre.DistanceTo(place) - curve.Circle.Radius) < 1e-9 * Radius
            : curve.Segment.DistanceTo(place) < 1e-9 * Radius;
}
