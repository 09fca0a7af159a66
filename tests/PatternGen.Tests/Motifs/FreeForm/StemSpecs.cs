namespace PatternGen.Tests.Motifs.FreeForm;

public class StemSpecs
{
    public static TheoryData<Stem> Stems =>
        [
            Stem.Vine(160, 22, 2),
            Stem.Vine(300, 30, 3),
            Stem.Fern(80),
            Stem.Fern(120, -60),
            Stem.Spray(80),
            Stem.Spray(80, -50).Varied(7, 1),
            Stem.Spray(90, 0).Varied(3),
            Stem.Along(
                FreeCurve.Through(new(0, 0), new(40, 18), new(90, 5), new(130, 25)).ToChain(),
                3
            ),
        ];

    [Theory]
    [MemberData(nameof(Stems), DisableDiscoveryEnumeration = true)]
    public void Leaves_keep_clear_of_the_stem_and_of_each_other(Stem stem)
    {
        FreeFormChecks.ShouldNotOverlap(stem);
        var stroke = stem.Chips.First();
        foreach (var leaf in stem.Chips.Skip(1))
            FreeFormChecks.Distance(stroke, leaf).ShouldBeGreaterThanOrEqualTo(stem.Gap - 1e-3);
    }

    [Theory]
    [MemberData(nameof(Stems), DisableDiscoveryEnumeration = true)]
    public void All_leaves_share_their_shapes(Stem stem)
    {
        var shapes = stem.Chips.Skip(1).Select(chip => chip.Shape);

        shapes
            .Distinct(ReferenceEqualityComparer.Instance)
            .Count()
            .ShouldBe(stem.Leaf.Vein is null ? 1 : 2);
        stem.ChipCount.ShouldBe(1 + stem.LeafCount * stem.Leaf.ChipCount);
    }

    [Fact]
    public void Leaves_stand_left_and_right_in_turn_and_get_smaller()
    {
        var stem = Stem.Along(Chain.Line(Point.Origin, new(150, 0)), 3)
            .WithLeaves(Leaf.Of(20, 6), 16)
            .WithoutTipLeaf()
            .Diminishing(0.4);

        var leaves = stem.Chips.Skip(1).Select(chip => chip.Outline).ToArray();
        for (var i = 0; i < leaves.Length; i++)
            Math.Sign(leaves[i].Extents.Centre.Y).ShouldBe(i % 2 == 0 ? 1 : -1);
        for (var i = 1; i < leaves.Length; i++)
            leaves[i].Area.ShouldBeLessThan(leaves[i - 1].Area);
        // At the place x of the stem the size is 1 - 0.6 x / 150, and areas go with its square.
        var along = stem.BareBase;
        foreach (var leaf in leaves)
        {
            var size = 1 - 0.6 * along / 150;
            leaf.Area.ShouldBe(Leaf.Of(20, 6).Chips.Single().Outline.Area * size * size, 1e-6);
            along += 16 * size;
        }
    }

    [Fact]
    public void Opposite_leaves_are_mirror_images_in_a_straight_stem()
    {
        var stem = Stem.Along(Chain.Line(Point.Origin, new(150, 0)), 3)
            .WithLeaves(Leaf.Of(20, 6).Bent(30), 20)
            .WithPlacing(LeafPlacing.Opposite)
            .WithoutTipLeaf();

        var leaves = stem.Chips.Skip(1).Select(chip => chip.Outline).ToArray();
        for (var i = 0; i < leaves.Length; i += 2)
        {
            var (left, right) = (leaves[i].Extents, leaves[i + 1].Extents);
            right.Min.X.ShouldBe(left.Min.X, 1e-6);
            right.Max.X.ShouldBe(left.Max.X, 1e-6);
            right.Min.Y.ShouldBe(-left.Max.Y, 1e-6);
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_stem_and_another_one_another()
    {
        static Point[] Corners(Stem stem) =>
            [
                .. stem
                    .Chips.SelectMany(chip => chip.Outline.Vertices)
                    .Select(vertex => vertex.Point),
            ];

        Corners(Stem.Spray(80).Varied(5)).ShouldBe(Corners(Stem.Spray(80).Varied(5)));
        Corners(Stem.Spray(80).Varied(5)).ShouldNotBe(Corners(Stem.Spray(80).Varied(6)));
        Corners(Stem.Spray(80).Varied(5, 0)).ShouldBe(Corners(Stem.Spray(80)));
    }

    [Fact]
    public void Chance_is_the_published_generator()
    {
        // Splitmix64 from seed 0 begins with 0xE220A8397B1DCDAF; value from memory. Its upper 53 bits as a share of 2^53:
        new Chance(0)
            .Next()
            .ShouldBe((0xE220A8397B1DCDAF >> 11) / Math.Pow(2, 53));
    }

    [Fact]
    public void Numbers_that_make_no_stem_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Stem.Vine(100, 60, 2));
        Should.Throw<ArgumentOutOfRangeException>(() => Stem.Vine(100, 10, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => Stem.Fern(double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => Stem.Spray(80, 171));
        Should.Throw<ArgumentOutOfRangeException>(() => Stem.Spray(80).WithLeafAngle(5));
        Should.Throw<ArgumentOutOfRangeException>(() => Stem.Spray(80).Diminishing(0));
        Should.Throw<ArgumentOutOfRangeException>(() => Stem.Spray(80).Varied(1, 2));
        Should.Throw<PatternException>(() =>
            Stem.Spray(80).WithLeaves(Leaf.Of(1, 0.4), 0.001).Chips.Count()
        );
    }
}
