namespace PatternGen.Tests.Layout;

public class BentPatternSpecs
{
    private static readonly Contour Leaf = new(
        new Vertex(new(-7, 0), 0.4),
        new Vertex(new(7, 0), 0.4)
    );

    private static readonly Chain Path = BentChecks.Ess(25);

    /// <summary>40 + 50π + 50 are 247.08 mm, 15.4 times 16: 15 repeats of 16.472.</summary>
    [Fact]
    public void I_can_bend_repeats_of_a_motif_along_a_path()
    {
        var bent = Path.Bend(Pattern.OfChips(Leaf), spacing: 16);

        bent.Repeats.ShouldBe(15);
        bent.Pitch.ShouldBe((90 + 50 * Math.PI) / 15, 1e-12);
        bent.ChipCount.ShouldBe(15);
        bent.Caption().ShouldContain("bent along a path of 247.08 mm, 15 repeats of 16.472 mm");
        bent.ShouldBeSound();
        foreach (var (chip, i) in bent.Chips.Select((chip, i) => (chip, i)))
        foreach (var point in BentChecks.Samples(Leaf))
            chip.Outline.DistanceTo(Image(point, bent.Pitch * (i + 0.5))).ShouldBeLessThan(0.01);
    }

    [Fact]
    public void Bent_once_a_pattern_lies_along_the_path_from_its_start()
    {
        var border = Rail.Of(200, 12)
            .Border(TriangleBand.Ruled(2, 4, 4, 2).WithLineCuts().Staggered());

        var bent = Path.Bend(border, offset: -6);

        bent.ShouldBeSound();
        bent.Stock.ShouldBeEmpty();
        foreach (var (chip, flat) in bent.Chips.Zip(border.Chips))
        {
            chip.Id.ShouldBe(flat.Id);
            foreach (var point in BentChecks.Samples(flat.Outline))
                chip.Outline.DistanceTo(Image(new(point.X, point.Y - 6), 0)).ShouldBeLessThan(0.01);
        }
        foreach (var (line, flat) in bent.LayoutLines.Zip(border.LayoutLines))
        foreach (var point in BentChecks.Samples(flat))
            line.DistanceTo(Image(new(point.X, point.Y - 6), 0)).ShouldBeLessThan(1e-9);
        bent.LineCuts.Select(cut => cut.Width).ShouldBe(border.LineCuts.Select(cut => cut.Width));
        Path.DistanceTo(bent.LineCuts[0].Path.PointAt(100)).ShouldBe(6, 1e-9);
    }

    [Fact]
    public void Holes_cuts_and_labels_go_with_their_motif()
    {
        var ring = new Circle(Point.Origin, 5).ToContour();
        var hole = new Circle(Point.Origin, 2).ToContour().Reversed();
        var motif = Pattern
            .OfChips([.. new Region(ring, hole).Parts])
            .With(Pattern.OfLabels(new Label("A", new(1, 2), 2.5)));

        var bent = Path.Bend(motif, spacing: 20);

        bent.ShouldBeSound();
        foreach (var (chip, i) in bent.Chips.Select((chip, i) => (chip, i)))
        {
            var middle = bent.Pitch * (i + 0.5);
            foreach (var point in BentChecks.Samples(hole))
                chip.Holes.Single().DistanceTo(Image(point, middle)).ShouldBeLessThan(0.01);
            bent.Labels[i].At.DistanceTo(Image(new(1, 2), middle)).ShouldBe(0, 1e-9);
        }
    }

    [Fact]
    public void Round_a_closed_path_repeats_close()
    {
        var path = BentChecks.Rounded(120, 80, 20);
        var bent = path.Bend(Pattern.OfChips(Leaf), spacing: 16).StartingAt(30);

        bent.ShouldBeSound();
        bent.Repeats.ShouldBe((int)Math.Round(path.Length / 16));
        // Over the whole length and half a repeat further: the first and the last one meet at the start.
        var wide = new Contour(
            new Vertex(new(-bent.Pitch / 2, 0), 0.2),
            new Vertex(new(bent.Pitch / 2, 0), 0.2)
        );
        path.Bend(Pattern.OfChips(wide), spacing: 16).ShouldHaveNoSeams();
        path.Bend(Pattern.OfChips(wide), spacing: 16).ShouldBeSound();
    }

    [Fact]
    public void A_motif_that_would_fold_is_refused_with_a_radius_that_works()
    {
        BentPattern Bent(double radius) =>
            BentChecks.Ess(radius).Bend(Pattern.OfChips(Leaf), spacing: 16, offset: 9);

        var refusal = Should.Throw<PatternException>(() => Bent(8).Extents);

        Bent(BentChecks.Number(refusal, "a radius")).ShouldBeSound();
    }

    [Fact]
    public void A_motif_longer_than_its_path_is_refused()
    {
        var leaf = Pattern.OfChips(Leaf);

        Should.Throw<PatternException>(() => Path.Bend(leaf).Extents).Message.ShouldContain("-7");
        Path.Bend(leaf.Moved(7, 0)).ShouldBeSound();
        Should.Throw<PatternException>(() => Path.Bend(leaf.Scaled(3), spacing: 16).Extents);
        Should.Throw<PatternException>(() =>
            BentChecks.Rounded(30, 20, 5).Bend(leaf.Scaled(9)).Extents
        );
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        var leaf = Pattern.OfChips(Leaf);

        Should.Throw<ArgumentNullException>(() => Path.Bend(null!));
        Should.Throw<ArgumentOutOfRangeException>(() => Path.Bend(leaf, spacing: 0));
        Should.Throw<ArgumentOutOfRangeException>(() => Path.Bend(leaf, offset: double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => Path.Bend(leaf).WithAccuracy(0));
        Should.Throw<InvalidOperationException>(() => Path.Bend(leaf).StartingAt(1));
    }

    /// <summary>The S path worked out by hand: a line of 40, half circles about (40, 25) and (40, 75), a line.</summary>
    private static Point Image(Point flat, double from)
    {
        var (x, y) = (from + flat.X, flat.Y);
        var half = 25 * Math.PI;
        if (x <= 40)
            return new(x, y);
        if (x >= 40 + 2 * half)
            return new(x - 2 * half, 100 + y);
        if (x <= 40 + half)
        {
            var left = (x - 40) / 25;
            return new(40 + (25 - y) * Math.Sin(left), 25 - (25 - y) * Math.Cos(left));
        }
        var right = (x - 40 - half) / 25;
        return new(40 - (25 + y) * Math.Sin(right), 75 - (25 + y) * Math.Cos(right));
    }
}
