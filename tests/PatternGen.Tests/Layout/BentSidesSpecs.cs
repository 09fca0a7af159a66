namespace PatternGen.Tests.Layout;

/// <summary>Chips along a line, a quarter circle to the left and a line, against a map worked out here.</summary>
public class BentSidesSpecs
{
    private const double Accuracy = 0.005;

    private static readonly Chain Path = new(
        new Vertex(new(0, 0)),
        new Vertex(new(60, 0), BentChecks.Quarter),
        new Vertex(new(100, 40)),
        new Vertex(new(100, 100))
    );

    public static TheoryData<string> BandNames => BentChecks.BandNames;

    [Theory]
    [MemberData(nameof(BandNames))]
    public void Sides_follow_the_path_within_the_accuracy_over_joints_too(string name)
    {
        var band = BentChecks.Band(name);
        var border = Path.Border(band).WithSides(BentSides.Following, Accuracy);

        foreach (var (bent, flat) in border.Chips.Zip(Flat(band)))
        {
            foreach (var point in BentChecks.Samples(flat.Outline))
                bent.Outline.DistanceTo(Bent(point, band)).ShouldBeLessThan(Accuracy);
            var image = Reference.Polygon(
                Contour.Polygon(
                    BentChecks
                        .Samples(flat.Outline, 200)
                        .Select(point => Bent(point, band))
                        .Distinct()
                )
            );
            bent.Outline.Area.ShouldBe(
                image.Area,
                Accuracy * bent.Outline.Length + image.Area / 1000
            );
        }
    }

    [Theory]
    [MemberData(nameof(BandNames))]
    public void Straight_sides_run_from_corner_to_corner(string name)
    {
        var band = BentChecks.Band(name);
        var border = Path.Border(band);

        foreach (var (bent, flat) in border.Chips.Zip(Flat(band)))
        foreach (var side in flat.Outline.Segments.Where(side => side.IsLine))
        {
            var (from, to) = (Bent(side.Start, band), Bent(side.End, band));
            if (side.Start.Y == side.End.Y)
                // A rule: exact, whatever the accuracy.
                foreach (var point in BentChecks.Samples(Chain.Line(side.Start, side.End)))
                    bent.Outline.DistanceTo(Bent(point, band)).ShouldBeLessThan(1e-9);
            else
                bent.Outline.Segments.ShouldContain(one =>
                    one.IsLine && one.Start.DistanceTo(from) < 1e-9 && one.End.DistanceTo(to) < 1e-9
                );
        }
    }

    /// <summary>The same band on a rail as long as the path, whose middle is the path.</summary>
    private static IEnumerable<Chip> Flat(TriangleBand band) =>
        Rail.Of(120 + 20 * Math.PI, band.Height).Border(band).Chips;

    private static Point Bent(Point flat, TriangleBand band)
    {
        var (x, y) = (flat.X, flat.Y - band.Height / 2);
        var bend = 20 * Math.PI;
        if (x <= 60)
            return new(x, y);
        if (x >= 60 + bend)
            return new(100 - y, 40 + x - 60 - bend);
        var angle = (x - 60) / 40;
        return new(60 + (40 - y) * Math.Sin(angle), 40 - (40 - y) * Math.Cos(angle));
    }
}
