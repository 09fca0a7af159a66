namespace PatternGen.Tests.Carving;

/// <summary>Places where tips meet, and where ground comes to a point. Limits: common practice, no source.</summary>
public class InspectionMeetingSpecs
{
    [Fact]
    public void Nine_tips_that_meet_are_a_warning()
    {
        var finding = Star(9).Inspect().Only(FindingKind.TipsMeeting);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        finding.Value.ShouldBe(9);
        finding.Limit.ShouldBe(8);
        finding.Place.DistanceTo(Point.Origin).ShouldBeLessThan(1e-9);
        finding.Chips.Select(id => id.Index).ShouldBe(Enumerable.Range(1, 9));
        finding.Message.ShouldContain("scrape there, do not undercut");
        // 1 mm down the walls stand 1 / tan 65° back, and the tips of 20° that much / sin 10°, on either side.
        var stands = 2 / Inspections.Tan65 / Math.Sin(Math.PI / 18);
        finding.Message.ShouldContain($"{Math.Round(stands, 2)} mm of wood stand round them");
        Star((int)finding.Remedy(RemedyKind.FewerTips).Value).Inspect().ShouldBeClear();
        Star(9, centre: finding.Remedy(RemedyKind.PlainCentre).Value).Inspect().ShouldBeClear();
        Star(9).Inspect(limits: InspectionLimits.Default.WithTips(9)).ShouldBeClear();
    }

    /// <summary>The second lies wholly below the line that the first stands on.</summary>
    [Fact]
    public void A_corner_in_the_middle_of_another_chip_s_side_only_touches()
    {
        Contour standing = Contour.Polygon(new(0, 0), new(12, 0), new(6, 9));
        Contour leaning = Contour.Polygon(new(6, 0), new(12, -6), new(18, -6));

        foreach (
            var chips in (Contour[][])
                [
                    [standing, leaning],
                    [leaning, standing],
                ]
        )
            Pattern
                .OfChips(chips)
                .Inspect(Knife.Held(), Inspections.Board)
                .Findings.ShouldNotContain(finding => finding.Kind == FindingKind.ChipsOverlap);
    }

    [Fact]
    public void Tips_round_too_small_a_plain_centre_meet()
    {
        var finding = Star(9, centre: 1.4).Inspect().Only(FindingKind.TipsMeeting);

        finding.Value.ShouldBe(9);
        finding.Place.DistanceTo(Point.Origin).ShouldBeLessThan(1e-9);
        Star(8, centre: 1.4).Inspect().ShouldBeClear();
    }

    [Fact]
    public void Tips_that_meet_are_counted_wherever_they_meet_and_each_place_once()
    {
        var stars = Pattern.OfChips(Star(9)).Repeated(30, 25).Turned(17);

        var finding = stars.Inspect(Knife.Held(), Inspections.Board).Only(FindingKind.TipsMeeting);

        finding.Count.ShouldBe(30);
        for (var i = 0; i < 30; i++)
            finding
                .Places.Min(place =>
                    place.Place.DistanceTo(Point.Origin.Polar(25 * i, Angle.FromDegrees(17)))
                )
                .ShouldBeLessThan(1e-6);
    }

    [Fact]
    public void Ground_that_comes_to_a_point_across_the_grain_is_a_warning()
    {
        var finding = Wedge(19).Inspect(grain: 0).Only(FindingKind.ShortGrain);

        finding.Severity.ShouldBe(FindingSeverity.Warning);
        finding.Value.ShouldBe(19, 1e-9);
        finding.Limit.ShouldBe(20);
        finding.Place.DistanceTo(Point.Origin).ShouldBeLessThan(1e-9);
        Wedge(finding.Remedy(RemedyKind.OpenRidge).Value).Inspect(grain: 0).ShouldBeClear();
        var turned = finding.Remedy(RemedyKind.TurnGrain).Value;
        turned.ShouldBe(90);
        Wedge(19).Inspect(turned).ShouldBeClear();
        Wedge(19).Inspect(grain: 44).Only(FindingKind.ShortGrain);
        Wedge(19).Inspect(grain: 46).ShouldBeClear();
        Wedge(19).Inspect(limits: InspectionLimits.Default.WithRidgeTipAngle(19)).ShouldBeClear();
    }

    [Fact]
    public void A_side_that_a_tip_touches_bounds_the_ground_there()
    {
        // A tip on the right side of a bar, and 15 degrees of ground beside it.
        Contour[] Touching(double angle) =>
            [Inspections.Bar(-3, -5), Inspections.Tip(50 - angle, 90 - angle)];

        var finding = Touching(15).Inspect(grain: 0).Only(FindingKind.ShortGrain);
        finding.Value.ShouldBe(15, 1e-9);
        finding.Chips.Count.ShouldBe(2);
        Touching(15).Inspect(grain: 90).ShouldBeClear();
        Touching(21).Inspect(grain: 0).ShouldBeClear();
    }

    [Fact]
    public void Ground_that_comes_to_a_point_within_a_chip_counts()
    {
        // A square of 12 mm, from whose upper side a tongue of ground reaches down to its middle.
        Contour Tongued(double degrees)
        {
            var half = 8 * Math.Tan(double.DegreesToRadians(degrees / 2));
            return Contour.Polygon(
                new(0, 0),
                new(12, 0),
                new(12, 12),
                new(6 + half, 12),
                new(6, 4),
                new(6 - half, 12),
                new(0, 12)
            );
        }
        var limits = InspectionLimits.Default.WithComfortableDepth(9);

        new[] { Tongued(19) }
            .Inspect(grain: 0, limits)
            .Only(FindingKind.ShortGrain)
            .Value.ShouldBe(19, 1e-9);
        new[] { Tongued(20) }.Inspect(grain: 0, limits).ShouldBeClear();
        new[] { Tongued(19) }.Inspect(grain: 90, limits).ShouldBeClear();
    }

    [Fact]
    public void Petals_that_are_tangent_leave_a_point_of_no_angle_between_them()
    {
        // Two quarters of a compass rosette of four: their sides leave the centre in one direction, and part.
        Contour Petal(double degrees) =>
            Inspections.Lens(12 * Math.Tan(Math.PI / 8), 12).Transformed(Transform.Rotate(degrees));
        var limits = InspectionLimits.Default.WithComfortableDepth(9);

        var finding = new[] { Petal(0), Petal(90) }
            .Inspect(grain: -45, limits)
            .Only(FindingKind.ShortGrain);

        finding.Value.ShouldBe(0, 1e-6);
        new[] { Petal(0), Petal(90) }.Inspect(grain: 45, limits).ShouldBeClear();
        // Of all four, tips are counted instead.
        new[] { Petal(0), Petal(90), Petal(180), Petal(270) }
            .Inspect(grain: -45, limits)
            .ShouldBeClear();
    }

    [Fact]
    public void Chips_that_fill_the_ground_round_a_point_leave_none()
    {
        var triangles = Enumerable.Range(0, 6).Select(i => Inspections.Tip(60 * i, 60 * i + 60, 6));

        triangles.Inspect().ShouldBeClear();
    }

    /// <summary>Chips of 20 degrees whose tips lie on a circle.</summary>
    private static Contour[] Star(int count, double centre = 0) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                    Inspections
                        .Tip(-10, 10, 10)
                        .Moved(centre / 2, 0)
                        .Transformed(Transform.Rotate(360.0 * i / count))
                ),
        ];

    /// <summary>Two chips of 40 degrees that meet in the origin, with ground of a given angle upright between them.</summary>
    private static Contour[] Wedge(double angle) =>
        [
            Inspections.Tip(90 - angle / 2 - 40, 90 - angle / 2),
            Inspections.Tip(90 + angle / 2, 90 + angle / 2 + 40),
        ];
}
