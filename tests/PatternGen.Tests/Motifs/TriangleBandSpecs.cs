namespace PatternGen.Tests.Motifs;

public class TriangleBandSpecs
{
    /// <summary>Common practice, no source: rules at 2, 4, 4, 2 mm carry two rows of 4 mm triangles in a 12 mm band.</summary>
    [Fact]
    public void Rules_2_4_4_2_carry_two_rows_of_4_mm_triangles_in_a_12_mm_band()
    {
        var band = TriangleBand.Ruled(2, 4, 4, 2);

        band.Height.ShouldBe(12);
        band.Rules.ShouldBe([0, 2, 6, 10, 12]);
        band.Rows.Count.ShouldBe(2);
        foreach (var row in band.Rows)
            (band.Rules[row.UpperRule] - band.Rules[row.LowerRule]).ShouldBe(4);
        band.NominalPitch.ShouldBe(8);
    }

    [Fact]
    public void Rows_face_each_other_unless_asked_otherwise()
    {
        var band = TriangleBand.Ruled(2, 4, 4, 2);

        band.Rows.Select(row => row.Pointing).ShouldBe([Pointing.Up, Pointing.Down]);
        band.BackToBack().Rows.Select(row => row.Pointing).ShouldBe([Pointing.Down, Pointing.Up]);
        band.Following().Rows.Select(row => row.Pointing).ShouldBe([Pointing.Up, Pointing.Up]);
    }

    [Fact]
    public void A_chip_is_a_triangle_on_its_rules()
    {
        var chip = Chips(TriangleBand.Ruled(2, 4, 2), pitch: 8).First();

        chip.Vertices.Select(vertex => vertex.Point).ShouldBe([new(0, 2), new(8, 2), new(4, 6)]);
        chip.SignedArea.ShouldBe(16); // half of base 8 × height 4
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(-0.5)]
    public void Curved_sides_rise_by_the_given_sagitta(double sagitta)
    {
        var chip = Chips(TriangleBand.Ruled(2, 4, 2).Curved(sagitta), pitch: 8).First();

        var slanted = chip.Segments.Where(side => !side.IsLine).ToArray();
        slanted.Length.ShouldBe(2);
        foreach (var side in slanted)
            side.Sagitta.ShouldBe(sagitta, 1e-12);
    }

    [Fact]
    public void Adjacent_triangles_share_their_sides_to_the_last_digit()
    {
        foreach (var curve in (double[])[0, 0.4, -0.4])
        {
            var chips = Chips(TriangleBand.Ruled(2, 5, 2).Curved(curve).Adjacent(), 10.0 / 3);
            var sides = chips
                .SelectMany(chip => chip.Segments)
                .Where(side => side.Start.Y != side.End.Y);
            var shared = sides.GroupBy(Undirected).Count(group => group.Count() == 2);
            // Every side but the outermost two of the strip.
            shared.ShouldBe(2 * 12 - 2);
        }
    }

    [Fact]
    public void The_margins_outer_rules_can_be_cut_as_grooves()
    {
        var border = Rail.Of(100, 30).Border(TriangleBand.Ruled(2, 4, 4, 2).WithLineCuts(0.8), 5);

        border.LineCuts.Select(cut => cut.Path.Start.Y).ShouldBe([5, 17]);
        border.LineCuts.ShouldAllBe(cut => cut.Width == 0.8);
        Rail.Of(100, 30).Border(TriangleBand.Ruled(2, 4, 4, 2)).LineCuts.ShouldBeEmpty();
    }

    [Fact]
    public void The_rules_are_layout_lines_over_the_whole_rail()
    {
        var border = Rail.Of(100, 30).Border(TriangleBand.Ruled(1, 3, 2), fromEdge: 5);

        border
            .LayoutLines.Select(line => (line.Start, line.End))
            .ShouldBe([
                (new(0, 5), new(100, 5)),
                (new(0, 6), new(100, 6)),
                (new(0, 9), new(100, 9)),
                (new(0, 11), new(100, 11)),
            ]);
    }

    public static TheoryData<string, FriezeGroup> Sampler =>
        new()
        {
            { "Single row", FriezeGroup.P1m1 },
            { "Raised diamonds", FriezeGroup.P2mm },
            { "Cut diamonds", FriezeGroup.P2mm },
            { "Raised zigzag", FriezeGroup.P2mg },
            { "Counter-change", FriezeGroup.P2mg },
            { "Rising rows", FriezeGroup.P1m1 },
            { "Ridge zigzag", FriezeGroup.P2mg },
            { "Curved ridges", FriezeGroup.P1m1 },
            { "Hollow diamonds", FriezeGroup.P2mm },
            { "Petal row", FriezeGroup.P1m1 },
            { "Saw teeth", FriezeGroup.P1 },
            { "Running leaves", FriezeGroup.P11m },
            { "Turning teeth", FriezeGroup.P2 },
            { "Gliding teeth", FriezeGroup.P11g },
        };

    /// <summary>The group follows by hand from the definition of each; it is stated by the band and detected from its chips.</summary>
    [Theory]
    [MemberData(nameof(Sampler))]
    public void Each_sample_has_the_frieze_group_that_it_states(string name, FriezeGroup expected)
    {
        var band = BandSampler.All.Single(sample => sample.Name == name).Band;
        var detector = new FriezeDetector(Chips(band, band.NominalPitch), band.NominalPitch);

        detector.RepeatsAtHalf.ShouldBeFalse();
        detector.Detect().ShouldBe(expected);
        band.FriezeGroup.ShouldBe(expected);
    }

    [Fact]
    public void The_sampler_has_at_least_eight_bands_and_the_test_knows_them_all()
    {
        BandSampler.All.Count.ShouldBeGreaterThanOrEqualTo(8);
        BandSampler
            .All.Select(sample => sample.Name)
            .ShouldBe(Sampler.Select(row => row.Data.Item1));
    }

    [Fact]
    public void Every_sample_looks_different()
    {
        var looks = BandSampler.All.Select(sample =>
            string.Join(" ", Chips(sample.Band, sample.Band.NominalPitch).Select(Describe).Order())
        );

        looks.Distinct().Count().ShouldBe(BandSampler.All.Count);
    }

    [Fact]
    public void No_chips_of_a_sample_overlap()
    {
        foreach (var sample in BandSampler.All)
        {
            var chips = Chips(sample.Band, sample.Band.NominalPitch)
                .Select(Reference.Polygon)
                .ToArray();
            for (var i = 0; i < chips.Length; i++)
            for (var j = i + 1; j < chips.Length; j++)
                chips[i].Intersection(chips[j]).Area.ShouldBeLessThan(1e-3, sample.Name);
        }
    }

    [Fact]
    public void Impossible_bands_are_refused_with_what_would_work()
    {
        Should.Throw<ArgumentException>(() => TriangleBand.Ruled()).Message.ShouldContain("1 to");
        Should.Throw<ArgumentOutOfRangeException>(() => TriangleBand.Ruled(2, 0, 2));
        Should.Throw<ArgumentOutOfRangeException>(() => TriangleBand.Ruled(2, double.NaN, 2));
        Should.Throw<ArgumentOutOfRangeException>(() => TriangleBand.Ruled(-4));
        var band = TriangleBand.Ruled(2, 4, 4, 2);
        Should
            .Throw<ArgumentException>(() => band.WithRows(TriangleRow.Between(2, 5)))
            .Message.ShouldContain("0 to 4");
        Should
            .Throw<ArgumentException>(() =>
                band.WithRows(TriangleRow.Between(1, 2), TriangleRow.Between(1, 3).Down())
            )
            .Message.ShouldContain("overlap");
        Should.Throw<ArgumentException>(() => band.Leaning(0.5).Adjacent());
        Should.Throw<ArgumentOutOfRangeException>(() => TriangleRow.Between(2, 2));
        Should.Throw<ArgumentOutOfRangeException>(() => band.Leaning(1.5));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(-3)]
    public void Curves_that_do_not_fit_say_which_would(double sagitta)
    {
        var rail = Rail.Of(80, 20);
        var band = TriangleBand.Ruled(2, 4, 2);

        var error = Should.Throw<PatternException>(() =>
            rail.Border(band.Curved(sagitta)).ChipCount
        );

        error.Place.ShouldNotBeNull();
        var works = double.Parse(
            error.Remedies[0].Split(' ').First(word => word.Contains('.')),
            System.Globalization.CultureInfo.InvariantCulture
        );
        (works / sagitta).ShouldBeInRange(0.1, 1);
        rail.Border(band.Curved(works * 0.999)).ChipCount.ShouldBe(10);
    }

    /// <summary>Twelve repeats, off the rail.</summary>
    private static Contour[] Chips(TriangleBand band, double pitch) =>
        [
            .. Rail.Of(12 * pitch, band.Height)
                .Border(band)
                .Fitted(fit => fit.Pitch(pitch))
                .Chips.Select(chip => chip.Outline),
        ];

    private static string Describe(Contour chip) =>
        string.Join(
            ",",
            chip.Vertices.Select(v => $"{v.Point.X:0.###} {v.Point.Y:0.###} {v.Bulge:0.###}")
        );

    private static (Point, Point, double) Undirected(Segment side) =>
        (side.Start.X, side.Start.Y).CompareTo((side.End.X, side.End.Y)) <= 0
            ? (side.Start, side.End, Math.Round(side.Bulge, 12))
            : (side.End, side.Start, Math.Round(-side.Bulge, 12));
}
