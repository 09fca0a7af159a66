using CsCheck;

namespace PatternGen.Tests.Motifs.FreeForm;

public class LeafSpecs
{
    [Fact]
    public void A_straight_leaf_is_two_circular_segments()
    {
        var leaf = Leaf.Of(14, 5).Chips.ShouldHaveSingleItem();

        // A chord of 14 and a sagitta of 2.5: r = (c²/4 + h²) / 2h (MathWorld, Circular Segment).
        var radius = (49 + 2.5 * 2.5) / 5;
        leaf.Outline.Segments.ShouldAllBe(side => Math.Abs(side.Radius - radius) < 1e-9);
        leaf.Outline.Count.ShouldBe(2);
        var sweep = 2 * Math.Asin(7 / radius);
        leaf.Outline.Area.ShouldBe(radius * radius * (sweep - Math.Sin(sweep)), 1e-9);
    }

    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(40, 0.5)]
    [InlineData(-90, 0.35)]
    [InlineData(120, 0.6)]
    public void Stalk_tip_and_width_are_where_they_are_asked_for(double bend, double widestAt)
    {
        var outline = Leaf.Of(30, 8)
            .Bent(bend)
            .WithWidestAt(widestAt)
            .Chips.ShouldHaveSingleItem()
            .Outline;

        outline.DistanceTo(Point.Origin).ShouldBe(0, 1e-9);
        outline.DistanceTo(new(30, 0)).ShouldBe(0, 1e-9);
        // The midrib as an arc of its own: chord 30, turning by the bend.
        var midrib = new Segment(Point.Origin, new(30, 0), Math.Tan(bend * Math.PI / 720));
        var along = midrib.Length * widestAt;
        foreach (var side in (double[])[-4, 4])
            outline
                .DistanceTo(midrib.PointAt(along) + midrib.NormalAt(along) * side)
                .ShouldBe(0, 1e-9);
    }

    [Theory]
    [InlineData(0, 0.4)]
    [InlineData(70, 0.3)]
    public void A_leaf_has_no_corner_but_stalk_and_tip(double bend, double widestAt)
    {
        var outline = Leaf.Of(30, 8).Bent(bend).WithWidestAt(widestAt).Chips.Single().Outline;
        var sides = outline.Segments.ToArray();

        var corners = sides
            .Zip(sides.Skip(1).Append(sides[0]))
            .Count(pair =>
                (pair.First.TangentAt(pair.First.Length) - pair.Second.TangentAt(0)).Length > 1e-7
            );
        corners.ShouldBe(2);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.8)]
    [InlineData(3)]
    public void A_vein_divides_the_leaf_and_takes_nothing_but_its_own_width(double vein)
    {
        var leaf = Leaf.Of(34, 12).Bent(25).WithWidestAt(0.4);
        var halves = leaf.WithVein(vein);

        halves.ChipCount.ShouldBe(2);
        var standing =
            vein > 0 ? Leaf.Of(34, vein).Bent(25).WithWidestAt(0.4).Chips.Single().Outline.Area : 0;
        halves
            .Chips.Sum(chip => chip.Outline.Area)
            .ShouldBe(leaf.Chips.Single().Outline.Area - standing, 1e-9);
        FreeFormChecks.ShouldNotOverlap(halves);
    }

    [Fact]
    public void Every_leaf_that_may_be_asked_for_is_sound() =>
        Gen.Select(
                Gen.Double[0.001, 1],
                Gen.Double[0.15, 0.85],
                Gen.Double[-170, 170],
                Gen.Double[0, 0.99]
            )
            .Sample(
                (width, widestAt, bend, vein) =>
                {
                    var leaf = Leaf.Of(20, 20 * width).WithWidestAt(widestAt).Bent(bend);
                    FreeFormChecks.ShouldNotOverlap(leaf);
                    FreeFormChecks.ShouldNotOverlap(leaf.WithVein(vein * leaf.Width));
                },
                iter: 50
            );

    [Fact]
    public void Sizes_that_make_no_leaf_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Leaf.Of(0, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => Leaf.Of(10, 11));
        Should.Throw<ArgumentOutOfRangeException>(() => Leaf.Of(double.NaN, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => Leaf.Of(10, 4).Bent(171));
        Should.Throw<ArgumentOutOfRangeException>(() => Leaf.Of(10, 4).WithWidestAt(0.1));
        Should.Throw<ArgumentOutOfRangeException>(() => Leaf.Of(10, 4).WithVein(4));
        Should.Throw<ArgumentOutOfRangeException>(() => Leaf.Of(10, 4).WithVein(-1));
    }
}
