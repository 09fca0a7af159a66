using CsCheck;

namespace PatternGen.Tests.Importing.Recipes;

public class RebuildingSpecs
{
    public static TheoryData<string> Bands => [.. BandSampler.All.Select(sample => sample.Name)];

    public static TheoryData<string> Rosettes =>
        [.. RosetteSampler.All.Select(sample => sample.Name)];

    public static TheoryData<string> Layouts => [.. LayoutSamples.All.Keys];

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Every_layout_and_free_form_motif_is_rebuilt_byte_for_byte(string name) =>
        LayoutSamples.All[name].ShouldBeRebuilt();

    [Theory]
    [MemberData(nameof(Bands))]
    public void Every_sample_band_is_rebuilt_byte_for_byte(string name)
    {
        var band = BandSampler.All.Single(sample => sample.Name == name).Band;

        Rail.Of(412.7, 41).Named("Rail of a bench").Border(band).ShouldBeRebuilt();
    }

    [Theory]
    [MemberData(nameof(Rosettes))]
    public void Every_sample_rosette_is_rebuilt_byte_for_byte(string name)
    {
        var sample = RosetteSampler.All.Single(sample => sample.Name == name);

        sample.Carved.ShouldBeRebuilt();
        sample.Carved.WithDrawing().ShouldBeRebuilt();
    }

    [Fact]
    public void A_rail_with_all_its_settings_is_rebuilt()
    {
        var row = TriangleRow.Between(1, 2);
        var band = TriangleBand
            .Ruled(2.1, 4.2, 3.9, 2.3)
            .WithRows(
                row.Leaning(0.3).Curved(0.2, -0.1).WithGap(0.4).HollowBase(0.35),
                TriangleRow.Between(2, 3).Down().Staggered().StabCut(depth: 1.7)
            )
            .WithPitch(7.7)
            .WithLineCuts(0.8);
        Rail.Of(533.3, 40)
            .WithTenons(31, 28.5)
            .Border(band, fromEdge: 9.25)
            .Fitted(fit =>
                fit.Pitch(7.5)
                    .PitchBetween(6.9, 8.8)
                    .EndMargins(5.5, 7)
                    .CentreMotif(Rosette.Petals(6, 11).Carve(part => part.IsPetal), 30)
                    .StaggeredRows(StaggeredEnds.Shifted)
            )
            .ShouldBeRebuilt();
    }

    [Fact]
    public void Rails_of_a_set_keep_the_pitch_that_they_share()
    {
        var borders = Rails
            .Of(742.5, 418, 319.3)
            .Wide(36)
            .SamePitch()
            .Border(TriangleBand.Ruled(2, 4, 4, 2));

        foreach (var border in borders)
        {
            var rebuilt = border.ShouldBeRebuilt().ShouldBeOfType<RailBorder>();
            rebuilt.Fit.Pitch.ShouldBe(borders[0].Fit.Pitch);
        }
    }

    [Fact]
    public void What_was_chosen_of_a_drawing_is_kept_as_numbers()
    {
        var drawing = Rosette.Overlaid(2, 6, 40);

        drawing.CarveOrbits(2, 4).ShouldBeRebuilt();
        drawing.Carve(part => part.Centroid.X > 3).ShouldBeRebuilt();
        drawing
            .Carve(part => part.Centroid.Y > 3)
            .JoinedWith((a, b) => a.Orbit == b.Orbit)
            .WithDrawing()
            .ShouldBeRebuilt();
        drawing.AllDesigns().Skip(5).First().Carve().Reverse().ShouldBeRebuilt();
    }

    [Fact]
    public void A_figure_drawn_by_steps_of_my_own_is_rebuilt_from_its_lines()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(3, 4);
            pencil.SetRadius(31);
            var rim = pencil.Circle(centre);
            var points = pencil.DivideCircle(rim, 7);
            pencil.JoinRound([.. points], 3);
            pencil.SetRadius(12.3);
            pencil.Circle(centre);
        });

        drawing.Carve(part => part.Ring > 1).WithDrawing().ShouldBeRebuilt();
    }

    [Fact]
    public void Pieces_as_they_are_come_back_with_every_digit()
    {
        var rim = new Circle(new(1.0 / 3, -2.0 / 7), 20.1).ToContour();
        var island = new Circle(new(1.0 / 3, -2.0 / 7), 12).ToContour().Reversed();
        var path = new Chain([new(-27, 0.1, 0.3), new(27, 1e-7, -0.2), new(31, 3)]);
        Pattern
            .Combine(
                Pattern.OfChips(new Region(rim, island).Parts),
                Pattern.OfChips(
                    Contour.Polygon(new(30, 0), new(40, 0), new(35.1, 7)),
                    new Contour(new(50, 0, 0.4), new(60, 0, 0.4))
                ),
                Pattern.OfLineCuts(
                    new LineCut(path, 1.5),
                    LineCut.Tapering(path, 1.2),
                    LineCut.Tapering(path, 1.1, over: 9)
                ),
                Pattern.OfLayoutLines(path, Chain.Line(new(0, 0), new(3, 7))),
                Pattern.OfStock(Contour.Rectangle(new(-40, -30), new(70, 30))),
                Pattern.OfLabels(
                    new Label("Lid, größe 2 × 3", new(3, -25), 2.5),
                    new Label("up", new(60, -20), 3, Angle.FromDegrees(90)),
                    new Label("askew", new(50, -20), 3, Angle.FromRadians(0.1234567890123))
                )
            )
            .ShouldBeRebuilt();
        Pattern.Empty.ShouldBeRebuilt();
    }

    [Fact]
    public void Placing_is_kept_to_the_last_digit_however_it_was_said()
    {
        var petals = Rosette.Petals(6, 15).Carve(part => part.IsPetal);
        var label = Pattern.OfLabels(new Label("A", new(1, 2), 3));
        Pattern[] placed =
        [
            petals.Moved(12.34, -5),
            petals.Turned(30),
            petals.Turned(-37.5, new(3.2, 4.1)),
            petals.Turned(180),
            petals.MirroredLeftRight(4.4),
            petals.MirroredTopBottom(-1.1),
            petals.Scaled(1.7),
            petals.Scaled(0.3, new(2.5, -8)),
            petals.Transformed(Transform.Mirror(new(3, 1), Angle.FromDegrees(22))),
            petals.Transformed(Transform.Rotate(Angle.FromRadians(0.7)).Then(Transform.Move(3, 9))),
            petals.Transformed(Transform.Resize(1e-3)).Transformed(Transform.Resize(1e3)),
            petals.Moved(5, 5).Turned(45).Scaled(2).MirroredLeftRight().Repeated(3, 70.1),
            label.MirroredLeftRight(2).Moved(3, 4),
            label.MirroredTopBottom(2),
            Pattern.OfLabels([.. label.MirroredLeftRight(2).Turned(12).Labels]),
        ];

        foreach (var pattern in placed)
            pattern.ShouldBeRebuilt();
    }

    [Fact]
    public void Any_placement_and_any_direction_are_kept_to_the_last_digit()
    {
        var chip = Pattern.OfChips(Contour.Polygon(new(0, 0), new(2, 0), new(1, 2)));
        var number = Gen.Double[-1000, 1000];
        Gen.Select(number, number, number, Gen.Double[0.01, 100], Gen.Bool)
            .Sample(
                (x, y, radians, factor, mirrored) =>
                {
                    var turn = Angle.FromRadians(radians);
                    var placement = Transform
                        .Rotate(turn, new(x, y))
                        .Then(Transform.Resize(factor, new(y, x)))
                        .Then(mirrored ? Transform.MirrorLeftRight(x) : Transform.Move(y, x));
                    var pattern = chip.Transformed(placement).WithGrain(turn);

                    var rebuilt = Recipe.Parse(pattern.ToRecipe().ToString()).Pattern;

                    rebuilt.Chips.Single().Placement.ShouldBe(pattern.Chips.Single().Placement);
                    var stock = Stock.Thick(20);
                    rebuilt
                        .Chips.Single()
                        .GrainOn(stock)
                        .ShouldBe(pattern.Chips.Single().GrainOn(stock));
                }
            );
    }

    [Fact]
    public void Names_cuts_and_grain_are_kept_in_the_order_they_were_given()
    {
        var border = Rail.Of(200, 30).Named("Lower rail").Border(TriangleBand.Ruled(2, 6, 6, 2));
        var angle = ChipCut.WallsAt(Angle.FromRadians(1.1));
        Pattern[] changed =
        [
            border.Named("Upper rail").Turned(90).WithGrain(90),
            border.Turned(90).WithGrain(Angle.FromRadians(0.3)).Named("x").With(border),
            border.WithCut(ChipCut.WallsAt(55)),
            border.WithCut(shape => shape.Extents.Min.Y > 8 ? ChipCut.Stabbed(1, 33) : angle),
            border.WithCut(ChipCut.Stabbed(2, depth: 1.3)).Scaled(1.5).Moved(3, 3),
            Pattern.OfLayoutLines(Chain.Line(new(0, 0), new(1, 1))).WithCut(_ => angle),
        ];

        foreach (var pattern in changed)
            pattern.ShouldBeRebuilt();
    }

    [Fact]
    public void A_motif_that_is_placed_many_times_is_described_once()
    {
        var petals = Rosette.Petals(6, 8).Carve(part => part.IsPetal);
        var pair = petals.With(petals.Moved(20, 0));
        var pattern = Pattern.Combine(
            Enumerable.Range(0, 40).Select(i => pair.Moved(0, 20 * i).Turned(i))
        );

        var json = pattern.ToRecipe().ToString();

        json.Split("\"fingerprint\"").Length.ShouldBe(2);
        pattern.ShouldBeRebuilt();
    }

    [Fact]
    public void Thousands_put_in_one_after_the_other_are_rebuilt()
    {
        var chip = Pattern.OfChips(Contour.Polygon(new(0, 0), new(2, 0), new(1, 2)));
        var all = chip;
        for (var i = 1; i < 3000; i++)
            all = all.With(chip.Moved(3 * i, 0));
        var json = all.ToRecipe().ToString();

        Recipe.Parse(json).Pattern.ToRecipe().ToString().ShouldBe(json);
        Recipe.Parse(json).Pattern.ChipCount.ShouldBe(3000);
    }

    [Fact]
    public void A_deep_nest_is_rebuilt()
    {
        var chip = Pattern.OfChips(Contour.Polygon(new(0, 0), new(2, 0), new(1, 2)));
        var nest = chip;
        for (var i = 1; i < 200; i++)
            nest = Pattern.Combine(chip.Moved(3 * i, 0), nest.Moved(0, 0.5));

        nest.ShouldBeRebuilt();
    }

    [Fact]
    public void It_is_saved_and_read_in_any_culture()
    {
        var border = Rail.Of(742.5, 36).Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6);
        var expected = border.ToRecipe().ToString();
        var culture = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = new("de-DE");
            border.ToRecipe().ToString().ShouldBe(expected);
            border.ShouldBeRebuilt();
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = culture;
        }
    }
}
