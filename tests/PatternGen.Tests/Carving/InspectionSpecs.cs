using CsCheck;
using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Carving;

/// <summary>The inspection as a whole.</summary>
public class InspectionSpecs
{
    /// <summary>A lens too deep, one too narrow, and two bars too near each other.</summary>
    private static readonly Pattern Faulty = Pattern.OfChips(
        Inspections.Lens(5),
        Inspections.Lens(1.8).Moved(0, 10),
        Inspections.Bar(30),
        Inspections.Bar(33.5)
    );

    [Fact]
    public void A_pattern_without_chips_is_fine()
    {
        var report = Pattern.Empty.Inspect(Knife.Held(), Inspections.Board);

        report.ShouldBeClear();
        report.IsCarvable.ShouldBeTrue();
        report.ToString().ShouldBe("nothing found");
    }

    [Fact]
    public void A_measured_rail_with_its_border_is_fine() =>
        Rail.Of(length: 742.5, width: 36)
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
            .EndMargins(6)
            .Inspect(Knife.Held(degrees: 65), Stock.Thick(12).GrainAlong(degrees: 0))
            .ShouldBeClear();

    [Fact]
    public void Ninety_equal_chips_with_one_fault_are_one_finding_with_ninety_places()
    {
        var row = Pattern.OfChips(Inspections.Lens(5)).Repeated(90, 22);
        var finding = row.Inspect(Knife.Held(), Inspections.Board)
            .Only(FindingKind.OverComfortableDepth);

        finding.Message.ShouldStartWith("Warning: chip 1.1 and 89 more like it, at (10, 0): ");
        finding.Count.ShouldBe(90);
        finding.Chips.Select(id => id.Index).ShouldBe(Enumerable.Range(1, 90));
        finding.Places[89].Place.X.ShouldBe(89 * 22 + 10, 1e-6);
    }

    [Fact]
    public void Equal_chips_drawn_one_by_one_are_put_together_too()
    {
        var turned = Enumerable
            .Range(0, 12)
            .Select(i => Inspections.Lens(5).Moved(20, 0).Transformed(Transform.Rotate(30 * i)));

        turned.Inspect().Only(FindingKind.OverComfortableDepth).Count.ShouldBe(12);
    }

    [Fact]
    public void Ninety_ridges_are_one_finding_of_pairs()
    {
        var bars = Pattern.OfChips(Inspections.Bar()).Repeated(91, 3.5);
        var finding = bars.Inspect(Knife.Held(), Inspections.Board.GrainAlong(90))
            .Only(FindingKind.RidgeTooThin);

        finding.Count.ShouldBe(90);
        finding.Chips.Count.ShouldBe(91);
        finding.Message.ShouldStartWith("Warning: chips 1.1 and 1.2 and 89 more pairs like them");
    }

    [Fact]
    public void Errors_come_first_and_counts_tell_how_many()
    {
        var report = Faulty.Inspect(Knife.Held().WithReach(5), Inspections.Board);

        report
            .Findings.Select(finding => finding.Kind)
            .ShouldBe([
                FindingKind.BeyondReach,
                FindingKind.OverComfortableDepth,
                FindingKind.TooNarrow,
                FindingKind.RidgeTooThin,
            ]);
        report.IsCarvable.ShouldBeFalse();
        report.Count(FindingSeverity.Error).ShouldBe(1);
        report.Count(FindingSeverity.Warning).ShouldBe(3);
        report.Count(FindingSeverity.Note).ShouldBe(0);
        report.ToString().ShouldStartWith("1 error, 3 warnings\nError: chip 1.1");
    }

    [Fact]
    public void Turned_mirrored_and_moved_a_pattern_has_the_same_findings() =>
        Gen.Select(Gen.Double[0, 360], Draw.Point(), Gen.Bool)
            .Sample(
                (degrees, move, mirrored) =>
                {
                    var placed = Faulty.Turned(degrees).Moved(move.X, move.Y);
                    if (mirrored)
                        placed = placed.MirroredLeftRight(7);
                    var grain = mirrored ? 180 - degrees : degrees;

                    var before = Faulty.Inspect(Knife.Held(), Inspections.Board);
                    var after = placed.Inspect(Knife.Held(), Inspections.Board.GrainAlong(grain));

                    after.Findings.Count.ShouldBe(before.Findings.Count);
                    foreach (var (one, other) in before.Findings.Zip(after.Findings))
                    {
                        other.Kind.ShouldBe(one.Kind);
                        other.Value.ShouldBe(one.Value, 1e-9);
                        other.Limit.ShouldBe(one.Limit);
                        other.Chips.ShouldBe(one.Chips);
                    }
                },
                iter: 100
            );

    [Fact]
    public void Many_threads_get_the_same_report()
    {
        var pattern = Faulty.Repeated(20, 60);
        var expected = pattern.Inspect(Knife.Held(), Inspections.Board).ToString();
        var reports = new string[16];

        Parallel.For(
            0,
            reports.Length,
            i => reports[i] = pattern.Inspect(Knife.Held(), Inspections.Board).ToString()
        );

        reports.ShouldAllBe(report => report == expected);
    }

    [Fact]
    public void Every_word_can_be_replaced()
    {
        var report = Faulty.Inspect(Knife.Held(), Inspections.Board, wording: new German());

        report.Findings[0].Message.ShouldStartWith("Warnung: ");
    }

    [Fact]
    public void Limits_that_are_none_are_refused()
    {
        var limits = InspectionLimits.Default;

        Should.Throw<ArgumentOutOfRangeException>(() => limits.WithRidge(-1));
        Should.Throw<ArgumentOutOfRangeException>(() => limits.WithEdge(double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => limits.WithFloor(1.1, 3));
        Should.Throw<ArgumentOutOfRangeException>(() => limits.WithComfortableDepth(0));
        Should.Throw<ArgumentOutOfRangeException>(() => limits.WithTipAngle(91));
        Should.Throw<ArgumentOutOfRangeException>(() => limits.WithTips(0));
        Should.Throw<ArgumentNullException>(() => Pattern.Empty.Inspect(null!, Inspections.Board));
        Should.Throw<ArgumentNullException>(() => Pattern.Empty.Inspect(Knife.Held(), null!));
    }

    [Fact]
    public void Two_chips_anywhere_are_judged_as_an_independent_library_measures_them() =>
        Gen.Select(Chip, Chip)
            .Sample(
                (one, other) =>
                {
                    var (a, b) = (Flat.Polygon(one), Flat.Polygon(other));
                    var (distance, common) = (a.Distance(b), a.Intersection(b).Area);
                    var report = new[] { one, other }.Inspect(
                        limits: InspectionLimits.Default.WithRidge(2, 2)
                    );
                    var overlap = report.Of(FindingKind.ChipsOverlap).Any();
                    var ridge = report.Of(FindingKind.RidgeTooThin).SingleOrDefault();

                    // What is nearer to the limits than the flattened arcs are to the true ones may go either way.
                    if (common > 0.1)
                        overlap.ShouldBeTrue();
                    if (common == 0 && distance > 2 * Flat.Accuracy)
                        overlap.ShouldBeFalse();
                    if (overlap || distance < 2 * Flat.Accuracy)
                        return;
                    if (distance < 2 - 2 * Flat.Accuracy)
                        ridge.ShouldNotBeNull().Value.ShouldBe(distance, 2 * Flat.Accuracy);
                    if (distance > 2 + 2 * Flat.Accuracy)
                        ridge.ShouldBeNull();
                },
                iter: 3000
            );

    private static Gen<Contour> Chip { get; } =
        Gen.Select(
                Gen.Double[-6, 6],
                Gen.Double[-6, 6],
                Gen.Double[0, 360],
                Gen.Double[1, 5],
                Gen.Int[0, 2]
            )
            .Select(
                (x, y, degrees, size, kind) =>
                    (
                        kind switch
                        {
                            0 => Inspections.Lens(size / 2, size),
                            1 => Inspections.Tip(0, 50, size),
                            _ => Inspections.Bar(0, 0, size, size / 2),
                        }
                    ).Transformed(Transform.Rotate(degrees).Then(Transform.Move(x, y)))
            );

    private sealed class German : Wording
    {
        public override string Severity(FindingSeverity severity) => "Warnung";
    }
}
