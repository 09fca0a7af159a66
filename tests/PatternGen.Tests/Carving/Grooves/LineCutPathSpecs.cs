namespace PatternGen.Tests.Carving.Grooves;

public class LineCutPathSpecs
{
    private const double Accuracy = 0.005;

    private static readonly VBit Bit = VBit.Of(90, 12);

    private static readonly Chain Bend = new([
        new(0, 0),
        new(10, 0, 0.5),
        new(16, 9, -0.3),
        new(30, 9),
    ]);

    /// <summary>A groove 2 mm wide with walls of 45° is 1 mm deep.</summary>
    [Fact]
    public void A_line_cut_as_wide_all_along_starts_at_its_depth_and_is_said_to_plunge()
    {
        var paths = Pattern
            .OfLineCuts(new LineCut(Chain.Line(new(0, 0), new(30, 0)), 2))
            .GroovePaths(Bit);
        var path = paths.Paths.Single();
        path.Entry.ShouldBe(GrooveEntry.Plunge);
        path.Places.Count.ShouldBe(2);
        path.Places.ShouldAllBe(place => Math.Abs(place.Depth - 1) < 1e-12);
        paths.PlungeCount.ShouldBe(1);
        paths.Notes().ShouldContain(note => note.Contains("plunge", StringComparison.Ordinal));
    }

    [Fact]
    public void A_line_cut_that_tapers_starts_and_ends_at_depth_0()
    {
        var path = Pattern
            .OfLineCuts(LineCut.Tapering(Chain.Line(new(0, 0), new(30, 0)), 2, over: 10))
            .GroovePaths(Bit)
            .Paths.Single();
        path.Entry.ShouldBe(GrooveEntry.Tip);
        path.Places.Select(place => place.Point.X).ShouldBe([0, 10, 20, 30]);
        path.Places.Select(place => Math.Round(place.Depth, 9)).ShouldBe([0, 1, 1, 0]);
    }

    /// <summary>The groove's own depth is the largest reach of a cone that runs along it.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_bent_line_cut_is_followed_within_the_accuracy_and_never_too_deep(bool isTapering)
    {
        var cut = isTapering ? LineCut.Tapering(Bend, 3) : new LineCut(Bend, 3);
        var cone = new SweptCone(Pattern.OfLineCuts(cut).GroovePaths(Bit, Accuracy).Paths, 45);
        var random = new Random(3);
        double worst = 0;
        for (var i = 0; i < 3000; i++)
        {
            var along = random.NextDouble() * Bend.Length;
            var aside = 4 * (random.NextDouble() - 0.5);
            var p = Bend.PointAt(along) + Bend.NormalAt(along) * aside;
            var ideal = Ideal(cut, p);
            var depth = cone.DepthAt(p.X, p.Y);
            worst = Math.Max(worst, ideal - depth);
            (depth - ideal).ShouldBeLessThan(1e-9);
        }
        worst.ShouldBeLessThanOrEqualTo(Accuracy + 1e-9);
    }

    /// <summary>By trying every 0.02 mm along the path, and then ever nearer to the best of these.</summary>
    private static double Ideal(LineCut cut, Point p)
    {
        var best = Enumerable.Range(0, Steps.Length).MaxBy(i => Reach(i * Step, Steps[i]));
        var (low, high) = ((best - 1) * Step, (best + 1) * Step);
        for (var i = 0; i < 40; i++)
        {
            var (a, b) = (low + (high - low) / 3, high - (high - low) / 3);
            if (ReachAt(a) < ReachAt(b))
                low = a;
            else
                high = b;
        }
        return ReachAt(low);

        double ReachAt(double along)
        {
            var place = Math.Clamp(along, 0, Bend.Length);
            return Reach(place, Bend.PointAt(place));
        }

        double Reach(double along, Point place)
        {
            var share = cut.Profile.IsTapering
                ? Math.Min(along, Bend.Length - along) / (Bend.Length / 2)
                : 1;
            return cut.Width / 2 * share - place.DistanceTo(p);
        }
    }

    private const double Step = 0.02;

    private static readonly Point[] Steps =
    [
        .. Enumerable.Range(0, (int)(Bend.Length / Step) + 1).Select(i => Bend.PointAt(i * Step)),
    ];
}
