using System.Numerics;

namespace PatternGen.Tests.Compass.Designs;

public class DesignSetSpecs
{
    /// <summary>OEIS A000031: necklaces of n beads of two colours; nothing carved is one of them and no design.</summary>
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 3)]
    [InlineData(3, 4)]
    [InlineData(4, 6)]
    [InlineData(5, 8)]
    [InlineData(6, 14)]
    [InlineData(7, 20)]
    [InlineData(8, 36)]
    [InlineData(9, 60)]
    [InlineData(10, 108)]
    [InlineData(11, 188)]
    [InlineData(12, 352)]
    public void A_ring_that_turns_has_as_many_designs_as_there_are_necklaces(int n, int necklaces)
    {
        var designs = Figures.RingOfCells(n, slant: 0.03).AllDesigns(Symmetry.None);

        designs.Count().ShouldBe(necklaces - 1);
        designs.Count.ShouldBe(necklaces - 1);
    }

    /// <summary>OEIS A000029: bracelets, which are necklaces that may be turned over.</summary>
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 3)]
    [InlineData(3, 4)]
    [InlineData(4, 6)]
    [InlineData(5, 8)]
    [InlineData(6, 13)]
    [InlineData(7, 18)]
    [InlineData(8, 30)]
    [InlineData(9, 46)]
    [InlineData(10, 78)]
    [InlineData(11, 126)]
    [InlineData(12, 224)]
    public void A_ring_with_mirrors_has_as_many_designs_as_there_are_bracelets(int n, int bracelets)
    {
        var designs = Figures.RingOfCells(n).AllDesigns(Symmetry.None);

        designs.Count().ShouldBe(bracelets - 1);
        designs.Count.ShouldBe(bracelets - 1);
    }

    [Fact]
    public void Full_symmetry_gives_every_choice_of_orbits()
    {
        var drawing = Figures.Of(Figures.Petals(6));
        var designs = drawing.AllDesigns();

        designs.Keep.ShouldBe(Symmetry.Full);
        designs.Count.ShouldBe(15);
        designs
            .Select(design => design.Id)
            .ShouldBe([
                "f1",
                "f2",
                "f3",
                "f4",
                "f1-2",
                "f1-3",
                "f1-4",
                "f2-3",
                "f2-4",
                "f3-4",
                "f1to3",
                "f1-2-4",
                "f1-3-4",
                "f2to4",
                "f1to4",
            ]);
        designs.First().KeptOrbits.ShouldBe([1]);
        designs.First().Parts.ShouldBe(drawing.OrbitParts(1));
        designs.KeptOrbits.Count.ShouldBe(4);
    }

    public static TheoryData<int, Symmetry> SmallFigures =>
        new()
        {
            { 3, Symmetry.None },
            { 4, Symmetry.None },
            { 6, Symmetry.TurnsOf(2) },
            { 6, Symmetry.TurnsOf(3) },
            { 6, Symmetry.Turns },
            { 7, Symmetry.Turns },
            { 12, Symmetry.TurnsOf(6) },
        };

    /// <summary>Every choice is tried, and moved by turns and mirrors of the plane, not by what was detected.</summary>
    [Theory]
    [MemberData(nameof(SmallFigures))]
    public void Designs_are_the_first_of_each_class_that_turns_and_mirrors_make(
        int n,
        Symmetry keep
    )
    {
        var drawing = Figures.Of(Figures.Petals(n));
        var set = drawing.AllDesigns(keep);
        var expected = BruteForce.Of(drawing, n, set.KeptOrbits);

        var found = set.Select(design => BruteForce.MaskOf(design.KeptOrbits)).ToList();

        found.Count.ShouldBe(found.Distinct().Count());
        found.ShouldBe(expected.Firsts());
        set.Count.ShouldBe(found.Count);
        set.UpToReversal()
            .Select(design => BruteForce.MaskOf(design.KeptOrbits))
            .ShouldBe(expected.FirstsUpToReversal(_ => true));
        set.UpToReversal().Count.ShouldBe(expected.FirstsUpToReversal(_ => true).Count());
    }

    /// <summary>Limits that hold both of a design and its reverse, one of them, and now this and now that.</summary>
    [Theory]
    [MemberData(nameof(SmallFigures))]
    public void Up_to_reversal_within_limits_a_design_goes_only_if_its_reverse_stays(
        int n,
        Symmetry keep
    )
    {
        var drawing = Figures.Of(Figures.Petals(n));
        var all = drawing.AllDesigns(keep);
        var expected = BruteForce.Of(drawing, n, all.KeptOrbits);
        var choices = all.KeptOrbits.Count;
        var half = choices / 2;

        foreach (
            var (min, max) in (ReadOnlySpan<(int, int)>)
                [(1, half), (half, half), (half, choices), (half + 1, choices), (2, choices - 1)]
        )
        {
            var set = all.WithOrbitCount(min, max).UpToReversal();
            var masks = Same(set, mask => Orbits(mask) >= min && Orbits(mask) <= max);
            set.Count.ShouldBe(masks);
        }
        foreach (
            var (min, max) in (ReadOnlySpan<(double, double)>)
                [(0.6001, 0.9901), (0.3001, 0.6999), (0.2001, 0.6001), (0.4001, 0.9001)]
        )
            Same(
                all.UpToReversal().WithCarvedShare(min, max),
                mask => Share(mask) >= min && Share(mask) <= max
            );
        foreach (var (min, max) in (ReadOnlySpan<(int, int)>)[(n, 2 * n), (2 * n, 3 * n), (n, 99)])
            Same(
                all.WithChipCount(min, max).UpToReversal(),
                mask => Chips(mask) >= min && Chips(mask) <= max
            );

        int Same(DesignSet set, Func<uint, bool> isWithin)
        {
            var masks = expected.FirstsUpToReversal(isWithin).ToList();
            set.Select(design => BruteForce.MaskOf(design.KeptOrbits)).ShouldBe(masks);
            return masks.Count;
        }

        IEnumerable<IReadOnlyList<DrawingPart>> Carved(uint mask) =>
            all.KeptOrbits.Where((_, i) => (mask >> i & 1) != 0);
        int Orbits(uint mask) => BitOperations.PopCount(mask);
        int Chips(uint mask) => Carved(mask).Sum(orbit => orbit.Count);
        double Share(uint mask) =>
            Carved(mask).Sum(orbit => orbit.Sum(part => part.Area))
            / drawing.Parts.Sum(part => part.Area);
    }

    [Fact]
    public void Designs_of_more_than_half_stay_up_to_reversal()
    {
        var designs = Figures.Of(Figures.Petals(6)).AllDesigns();

        // Their reverses carve less than half (elementary).
        var most = designs.WithCarvedShare(0.6, 0.99);
        most.ShouldNotBeEmpty();
        most.UpToReversal().ShouldBe(most);
        // 3 of 4 orbits, whose reverse is one.
        designs.WithOrbitCount(3, 3).UpToReversal().Count.ShouldBe(4);
        designs.UpToReversal().WithOrbitCount(3, 3).Count().ShouldBe(4);
    }

    [Fact]
    public void Up_to_reversal_half_of_all_choices_are_left()
    {
        foreach (var n in (int[])[3, 5, 6, 7])
        {
            var designs = Figures.Of(Figures.Petals(n)).AllDesigns();
            var (all, half) = (designs.Count(), designs.UpToReversal().Count());

            half.ShouldBe((all + 1) / 2);
            designs.UpToReversal().Count.ShouldBe(half);
        }
    }

    [Fact]
    public void Going_on_behind_a_design_gives_the_rest()
    {
        foreach (var keep in (Symmetry[])[Symmetry.Full, Symmetry.TurnsOf(3), Symmetry.None])
        foreach (
            var set in Variants(Figures.Of(Figures.Petals(keep == Symmetry.None ? 4 : 6)), keep)
        )
        {
            var ids = set.Select(design => design.Id).ToList();
            foreach (var at in (int[])[0, 1, ids.Count / 3, ids.Count / 2, ids.Count - 1])
            {
                var rest = set.After(ids[at]);
                rest.Count.ShouldBeNull();
                rest.Select(design => design.Id).ShouldBe(ids.Skip(at + 1));
            }
        }

        static IEnumerable<DesignSet> Variants(CompassDrawing drawing, Symmetry keep)
        {
            var all = drawing.AllDesigns(keep);
            return
            [
                all,
                all.UpToReversal(),
                all.WithCarvedShare(0.3, 0.5),
                all.WithOrbitCount(2, 4).WithChipCount(3, 12),
                all.WithCarvedShare(0.4, 0.9).UpToReversal(),
            ];
        }
    }

    [Fact]
    public void Going_on_behind_two_designs_is_going_on_behind_the_later_one()
    {
        var set = Figures.Of(Figures.Petals(6)).AllDesigns(Symmetry.TurnsOf(3));
        // By the number of orbits, and by the orbits.
        var (one, two, more) = ("t3-1", "t3-2", "f1-2");

        foreach (var (earlier, later) in (ReadOnlySpan<(string, string)>)[(one, two), (two, more)])
        {
            var behind = set.After(later);
            set.After(earlier).After(later).ShouldBe(behind);
            behind.After(earlier).ShouldBe(behind);
            behind.After(later).ShouldBe(behind);
        }
    }

    [Fact]
    public void Going_on_behind_any_choice_gives_what_comes_later()
    {
        var set = Figures.RingOfCells(8).AllDesigns(Symmetry.None);
        var all = set.Select(design => design.KeptOrbits.ToArray()).ToList();

        // Cells 3 and 5 are no first of their class.
        var behind = set.After("t1-4-6").Select(design => design.KeptOrbits.ToArray()).ToList();

        behind.ShouldBe(all.Where(orbits => orbits.Length > 2 || IsLater(orbits)));

        static bool IsLater(int[] orbits) =>
            orbits.Length == 2 && (orbits[0] > 4 || (orbits[0] == 4 && orbits[1] > 6));
    }

    [Fact]
    public void Limits_leave_out_what_lies_beyond_them()
    {
        var all = Figures.Of(Figures.Petals(4)).AllDesigns(Symmetry.None);

        Same(
            all.WithCarvedShare(0.25, 0.4),
            design => design.CarvedShare is >= 0.25 - 1e-12 and <= 0.4 + 1e-12
        );
        Same(all.WithChipCount(3, 5), design => design.ChipCount is >= 3 and <= 5);
        Same(all.WithOrbitCount(16, 99), design => design.OrbitCount >= 16);
        Same(
            all.WithOrbitCount(2, 3).WithCarvedShare(0, 0.1).UpToReversal(),
            design => design.OrbitCount is 2 or 3 && design.CarvedShare <= 0.1
        );
        all.WithChipCount(3, 5).Count.ShouldBeNull();
        all.WithCarvedShare(0.25, 0.4).Count.ShouldBeNull();
        all.WithOrbitCount(2, 3).Count.ShouldBe(all.Count(design => design.OrbitCount is 2 or 3));
        all.WithOrbitCount(50, 60).ShouldBeEmpty();
        all.WithOrbitCount(50, 60).Count.ShouldBe(0);

        void Same(DesignSet limited, Func<Design, bool> isWanted) =>
            limited.Select(design => design.Id).ShouldBe(all.Where(isWanted).Select(d => d.Id));
    }

    [Fact]
    public void Limits_far_up_are_reached_at_once()
    {
        // 84 parts: so many choices of a few that nobody could wait for those of half the area.
        var set = Figures.Of(Figures.Petals(12)).AllDesigns(Symmetry.None);

        set.WithCarvedShare(0.6, 0.601).First().CarvedShare.ShouldBe(0.6005, 0.0005 + 1e-12);
        set.WithChipCount(40, 41).First().ChipCount.ShouldBe(40);
    }

    [Fact]
    public void An_id_is_the_same_in_every_set_and_however_the_figure_was_drawn()
    {
        var curves = Figures.Petals(6);
        var drawing = Figures.Of(curves);
        new Random(3).Shuffle(curves);
        var shuffled = Figures.Of(curves);
        var none = drawing.AllDesigns(Symmetry.None);

        foreach (var design in drawing.AllDesigns().Concat(drawing.AllDesigns(Symmetry.TurnsOf(3))))
        {
            var found = none.Find(design.Id);
            found.Id.ShouldBe(design.Id);
            found.Parts.ShouldBe(design.Parts);
            var other = shuffled.AllDesigns(Symmetry.None).Find(design.Id);
            other
                .Parts.Select(part => part.Number)
                .ShouldBe(design.Parts.Select(part => part.Number));
        }
        foreach (var design in none.WithCarvedShare(0.49, 0.5).Take(2000))
            none.Find(design.Id).ShouldBe(design);
    }

    [Theory]
    [InlineData("")]
    [InlineData("f")]
    [InlineData("f0")]
    [InlineData("f5")]
    [InlineData("f1to")]
    [InlineData("f4to2")]
    [InlineData("g1")]
    [InlineData("t-1")]
    [InlineData("t5-1")]
    [InlineData("t3-1")]
    [InlineData("f1,2")]
    [InlineData("f99999999999")]
    public void Other_words_are_no_ids(string id) =>
        Should
            .Throw<ArgumentException>(() =>
                Figures.Of(Figures.Petals(6)).AllDesigns(Symmetry.Turns).Find(id)
            )
            .Message.ShouldContain($"\"{id}\"");

    [Fact]
    public void Plain_parts_are_never_chosen()
    {
        var designs = Figures.RingOfCells(6).AllDesigns(Symmetry.Turns);

        designs.ShouldHaveSingleItem().Parts.ShouldAllBe(part => !part.IsPlain);
        designs.Single().CarvedShare.ShouldBe(0.75, 1e-12);
    }

    [Fact]
    public void Circles_round_one_centre_have_every_choice()
    {
        var drawing = Figures.Of([
            new Circle(default, 10),
            new Circle(default, 20),
            new Circle(default, 30),
        ]);

        foreach (
            var keep in (Symmetry[])
                [Symmetry.Full, Symmetry.Turns, Symmetry.TurnsOf(5), Symmetry.None]
        )
            drawing.AllDesigns(keep).Count().ShouldBe(7);
    }

    [Fact]
    public void Turns_that_the_figure_does_not_have_are_refused_with_those_that_it_has()
    {
        var drawing = Figures.Of(Figures.Petals(6));

        Should
            .Throw<PatternException>(() => drawing.AllDesigns(Symmetry.TurnsOf(4)))
            .Remedies.ShouldBe(["TurnsOf(6)", "TurnsOf(3)", "TurnsOf(2)", "None"]);
        Should.Throw<ArgumentOutOfRangeException>(() => Symmetry.TurnsOf(0));
        drawing.AllDesigns(Symmetry.TurnsOf(6)).Count.ShouldBe(15);
        drawing.AllDesigns(Symmetry.TurnsOf(1)).Keep.ShouldBe(Symmetry.None);
    }

    [Fact]
    public void More_orbits_than_can_be_told_apart_are_refused_with_the_symmetry_that_helps()
    {
        var drawing = Figures.Of(Figures.Petals(24));

        var refusal = Should.Throw<PatternException>(() => drawing.AllDesigns(Symmetry.None));
        refusal.Message.ShouldContain("128");
        refusal.Remedies[0].ShouldBe($"keep Full: {drawing.OrbitCount} orbits to choose from");
        drawing.AllDesigns().Count.ShouldBe(BigInteger.Pow(2, drawing.OrbitCount) - 1);
    }

    [Fact]
    public void Of_symmetries_that_leave_too_many_orbits_none_is_a_remedy()
    {
        var rings = Figures.Of(
            Enumerable.Range(1, 130).Select(i => new Curve(new Circle(Point.Origin, i)))
        );

        // One for each ring, whatever is kept.
        var refusal = Should.Throw<PatternException>(() => rings.AllDesigns());
        refusal.Message.ShouldContain("130 orbits");
        refusal.Remedies.ShouldBe(["a drawing of fewer lines"]);
    }

    [Fact]
    public void Parts_that_stay_ground_do_not_count_as_orbits_to_choose_from()
    {
        // 256 cells round a plain middle: with m turns kept, 256 / m orbits of cells.
        var ring = Figures.RingOfCells(256);
        var refusal = Should.Throw<PatternException>(() => ring.AllDesigns(Symmetry.None));

        refusal.Message.ShouldContain("256 orbits");
        refusal
            .Remedies.SkipLast(1)
            .ShouldBe([
                "keep Full: 1 orbit to choose from",
                "keep TurnsOf(256): 1 orbit to choose from",
                .. Enumerable
                    .Range(1, 7)
                    .Select(i => 1 << i)
                    .Reverse()
                    .Select(m => $"keep TurnsOf({m}): {256 / m} orbits to choose from"),
            ]);
        ring.AllDesigns(Symmetry.TurnsOf(2)).WithOrbitCount(128, 128).Count.ShouldBe(1);
    }

    [Fact]
    public void The_default_value_is_no_design()
    {
        Design none = default;

        foreach (
            var asked in (Func<object>[])
                [
                    () => none.Id,
                    () => none.ChipCount,
                    () => none.OrbitCount,
                    () => none.KeptOrbits,
                    () => none.CarvedShare,
                    () => none.Parts,
                    () => none.Drawing,
                ]
        )
            Should.Throw<InvalidOperationException>(asked).Message.ShouldContain("AllDesigns");
        none.ToString().ShouldBe("no design");
        none.ShouldBe(default);
        none.ShouldNotBe(Figures.Of(Figures.Petals(6)).AllDesigns().First());
    }

    [Fact]
    public void A_hundred_and_twenty_eight_orbits_are_told_apart()
    {
        var set = Figures.RingOfCells(128).AllDesigns(Symmetry.None);

        // Necklaces that may be turned over, of one, two and all beads (elementary).
        set.WithOrbitCount(1, 1).Count().ShouldBe(1);
        set.WithOrbitCount(2, 2).Count().ShouldBe(64);
        set.WithOrbitCount(127, 128).Count().ShouldBe(2);
        set.Take(100).Last().OrbitCount.ShouldBe(3);
        // The middle is orbit 1.
        var everyOther = Enumerable.Range(1, 64).Select(i => 2 * i);
        var middle = set.Find("t1-" + string.Join('-', everyOther));
        middle.Id.ShouldBe("t64-2");
        set.WithOrbitCount(64, 64).First().Id.ShouldBe("t1-2to65");
        var some = set.Skip(5000).Take(2).ToList();
        set.After(some[0].Id).First().ShouldBe(some[1]);
    }

    [Fact]
    public void Shares_and_counts_are_out_of_range()
    {
        var designs = Figures.Of(Figures.Petals(6)).AllDesigns();

        Should.Throw<ArgumentOutOfRangeException>(() => designs.WithCarvedShare(-0.1, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => designs.WithCarvedShare(0.5, 0.4));
        Should.Throw<ArgumentOutOfRangeException>(() => designs.WithCarvedShare(double.NaN, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => designs.WithChipCount(0, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => designs.WithOrbitCount(2, 1));
        Should.Throw<ArgumentNullException>(() => designs.Find(null!));
    }

    [Fact]
    public void Lines_that_bound_nothing_have_no_designs()
    {
        var designs = Figures.Of([new Segment(new(0, 0), new(10, 0))]).AllDesigns();

        designs.ShouldBeEmpty();
        designs.Count.ShouldBe(0);
    }
}
