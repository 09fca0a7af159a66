namespace PatternGen.Tests.Carving;

/// <summary>Chips to inspect, and what is found of them.</summary>
internal static class Inspections
{
    /// <summary>Tangent of 65 degrees, from trigonometric tables.</summary>
    internal const double Tan65 = 2.14450692050956;

    internal static readonly Stock Board = Stock.Thick(20);

    /// <summary>A two-sided chip from (0, 0) to the right. Its largest circle is as wide as the chip.</summary>
    internal static Contour Lens(double width, double length = 20) =>
        new(new Vertex(0, 0, width / length), new Vertex(length, 0, width / length));

    /// <summary>A chip of two straight legs that leave the origin in the given directions.</summary>
    internal static Contour Tip(double fromDegrees, double toDegrees, double length = 5) =>
        Contour.Polygon(
            Point.Origin,
            Point.Origin.Polar(length, Angle.FromDegrees(fromDegrees)),
            Point.Origin.Polar(length, Angle.FromDegrees(toDegrees))
        );

    /// <summary>An upright chip 3 mm wide and 10 mm high, its lower left corner at the given place.</summary>
    internal static Contour Bar(double x = 0, double y = 0, double width = 3, double height = 10) =>
        Contour.Rectangle(new(x, y), new(x + width, y + height));

    internal static Contour Moved(this Contour chip, double dx, double dy) =>
        chip.Transformed(Transform.Move(dx, dy));

    internal static Contour Moved(this Contour chip, Remedy remedy) =>
        chip.Transformed(
            Transform.Move(Vector.Towards(remedy.Direction.ShouldNotBeNull()) * remedy.Value)
        );

    internal static InspectionReport Inspect(
        this IEnumerable<Contour> chips,
        double grain = 0,
        InspectionLimits? limits = null
    ) => Pattern.OfChips(chips).Inspect(Knife.Held(), Board.GrainAlong(grain), limits);

    /// <summary>The only finding there is.</summary>
    internal static Finding Only(this InspectionReport report, FindingKind kind)
    {
        var finding = report.Findings.ShouldHaveSingleItem();
        finding.Kind.ShouldBe(kind);
        return finding;
    }

    internal static void ShouldBeClear(this InspectionReport report) =>
        report.Findings.Select(finding => finding.Message).ShouldBeEmpty();

    internal static Remedy Remedy(this Finding finding, RemedyKind kind) =>
        finding.Remedies.Where(remedy => remedy.Kind == kind).ShouldHaveSingleItem();
}
