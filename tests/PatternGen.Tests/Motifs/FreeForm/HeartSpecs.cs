namespace PatternGen.Tests.Motifs.FreeForm;

public class HeartSpecs
{
    [Theory]
    [InlineData(20, 18)]
    [InlineData(20, 16)]
    [InlineData(10, 20)]
    public void A_heart_has_the_size_asked_for_and_is_its_own_mirror_image(
        double width,
        double height
    )
    {
        var outline = Heart.Of(width, height).Chips.Single().Outline;

        outline.Extents.Width.ShouldBe(width, 1e-9);
        outline.Extents.Max.Y.ShouldBe(height, 1e-9);
        outline.Extents.Min.Y.ShouldBe(0, 1e-9);
        foreach (var vertex in outline.Vertices)
            outline.DistanceTo(new(-vertex.Point.X, vertex.Point.Y)).ShouldBe(0, 1e-9);
        FreeFormChecks.ShouldNotOverlap(Heart.Of(width, height));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.2)]
    public void Its_halves_leave_a_ridge_between_them(double ridge)
    {
        var halves = Heart.Of(20, 18).Halved(ridge);

        halves.ChipCount.ShouldBe(2);
        var (left, right) = (halves.Chips.First(), halves.Chips.Last());
        left.Outline.Extents.Max.X.ShouldBe(-ridge / 2, 1e-9);
        right.Outline.Extents.Min.X.ShouldBe(ridge / 2, 1e-9);
        // What the ridge takes is the strip of the whole heart between its edges; without one nothing is lost.
        var strip = new Region(Heart.Of(20, 18).Chips.Single().Outline).Intersection(
            ridge > 0
                ? new Region(Contour.Rectangle(new(-ridge / 2, -1), new(ridge / 2, 30)))
                : Region.Empty
        );
        (left.Outline.Area + right.Outline.Area + strip.Area).ShouldBe(
            Heart.Of(20, 18).Chips.Single().Outline.Area,
            1e-6
        );
        FreeFormChecks.ShouldNotOverlap(halves);
    }

    [Fact]
    public void Sizes_that_make_no_heart_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Heart.Of(20, 15));
        Should.Throw<ArgumentOutOfRangeException>(() => Heart.Of(20, 41));
        Should.Throw<ArgumentOutOfRangeException>(() => Heart.Of(double.NaN, 20));
        Should.Throw<ArgumentOutOfRangeException>(() => Heart.Of(20, 18).Halved(6));
    }
}
