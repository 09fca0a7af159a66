namespace PatternGen.Tests.Layout.Frames;

public class PanelSpecs
{
    private static readonly TriangleBand Diamonds = TriangleBand.Ruled(2, 4, 4, 2);

    /// <summary>12 mm of band and twice 5 of ground on each edge, a margin of 4, and a circle of radius 40 + 3.</summary>
    [Fact]
    public void I_can_compose_border_field_and_rosette_in_one_expression()
    {
        Region? given = null;
        var panel = Panel
            .Of(400, 300)
            .Frame(Diamonds, fromEdge: 5)
            .Field(
                inner =>
                {
                    given = inner;
                    return Squares(inner);
                },
                margin: 4
            )
            .Centre(Rosette.Petals(12, 40), gap: 3);

        panel.ShouldBeCarvable();
        given.ShouldNotBeNull().Area.ShouldBe((400 - 52) * (300 - 52) - Math.PI * 43 * 43, 1e-6);
        panel.Stock.ShouldHaveSingleItem().Area.ShouldBe(400 * 300);
        panel.Caption()[0].ShouldBe("Panel 400 × 300 mm");
        panel.Caption().ShouldContain("12 petals, radius 40 mm");
        // Border, field, centre: so the chips are numbered.
        var rows = panel.Chips.Select(chip => chip.Id.Row).ToArray();
        rows.ShouldBe(rows.Order());
        panel
            .Chips.TakeLast(12)
            .ShouldAllBe(chip => chip.Outline.Centroid.DistanceTo(new(200, 150)) < 40);
        panel.Chips.First().Outline.Extents.Min.Y.ShouldBeLessThan(17);
    }

    [Fact]
    public void The_order_in_which_I_say_it_does_not_matter()
    {
        var motif = Rosette.Petals(12, 30);
        var panels = (Panel[])
            [
                Panel.Of(200, 160).Frame(Diamonds).Field(Squares, 2).Centre(motif, 3),
                Panel.Of(200, 160).Centre(motif, 3).Field(Squares, 2).Frame(Diamonds),
                Panel.Of(200, 160).Field(Squares, 2).Centre(motif, 3).Frame(Diamonds),
            ];

        var drawn = panels
            .Select(panel =>
                string.Join('\n', panel.Chips.Select(chip => $"{chip.Id} {chip.Outline.Extents}"))
            )
            .ToArray();
        drawn.Distinct().ShouldHaveSingleItem();
    }

    [Fact]
    public void A_field_is_drawn_at_once_and_kept()
    {
        var calls = 0;
        var panel = Panel
            .Of(200, 160)
            .Field(inner =>
            {
                calls++;
                return Squares(inner);
            });

        calls.ShouldBe(1);
        _ = panel.Chips.Count();
        _ = panel.FieldPattern.ShouldNotBeNull().ChipCount;
        calls.ShouldBe(1);
    }

    [Fact]
    public void A_panel_can_have_any_border()
    {
        var border = Frame
            .Regular(6, 110, band: 30)
            .Border(Diamonds, fromEdge: 2)
            .Inside(Diamonds, gap: 1)
            .Wrapped();
        var panel = Panel.Of(border).Field(Squares).Centre(Rosette.Petals(6, 20), gap: 2);

        panel.ShouldBeCarvable();
        panel.Stock.ShouldHaveSingleItem();
        panel.FrameBorder.ShouldNotBeNull().Fits.Count.ShouldBe(12);
        panel.Named("Lid of a box").Caption()[0].ShouldStartWith("Lid of a box, ");
    }

    [Fact]
    public void A_field_that_is_drawn_already_stays_where_it_lies()
    {
        var field = Pattern.OfChips(Contour.Rectangle(new(30, 40), new(36, 46)));

        Panel
            .Of(100, 90)
            .Field(field)
            .Chips.ShouldHaveSingleItem()
            .Outline.Extents.ShouldBe(new(new(30, 40), new(36, 46)));
    }

    [Fact]
    public void What_leaves_nothing_to_carve_is_refused()
    {
        var panel = Panel.Of(100, 80).Frame(Diamonds, 4);

        Should
            .Throw<PatternException>(() => panel.Centre(Rosette.Petals(12, 30)).Chips.Count())
            .Message.ShouldContain("less than 20 mm");
        Should
            .Throw<PatternException>(() => panel.Field(Squares, margin: 25))
            .Message.ShouldContain("a smaller margin");
        Should
            .Throw<PatternException>(() => panel.Frame(Diamonds, 20))
            .Message.ShouldContain("leaves nothing inside");
        Should.Throw<ArgumentOutOfRangeException>(() => panel.Field(Squares, margin: double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => Panel.Of(0, 10));
        Should.Throw<ArgumentNullException>(() => panel.Field((Func<Region, Pattern>)null!));
    }

    /// <summary>Arcs of 60 mm at the edge have 40 mm where the border ends; they leave out (4 - π) r² of a rectangle's corners.</summary>
    [Fact]
    public void A_field_keeps_within_a_border_that_bends_round_the_corners()
    {
        foreach (var wood in (double[])[0, 60])
        {
            var panel = Panel.Of(
                Frame.Of(300, 200, band: 20).Rounded(wood).Border(Diamonds).Bent(60)
            );

            panel.FreeRegion().Area.ShouldBe(260 * 160 - (4 - Math.PI) * 40 * 40, 1e-6);
            panel.Field(inner => Field.Within(inner).Squares(6).ClippedCells()).ShouldBeCarvable();
        }
    }

    /// <summary>Square chips of 6 mm, 8 mm apart, as far as they lie within.</summary>
    private static Pattern Squares(Region region)
    {
        var extents = region.Extents;
        var squares = new List<Contour>();
        for (var x = extents.Min.X; x < extents.Max.X; x += 8)
        for (var y = extents.Min.Y; y < extents.Max.Y; y += 8)
        {
            var square = Contour.Rectangle(new(x, y), new(x + 6, y + 6));
            if (new Region(square).Difference(region).IsEmpty)
                squares.Add(square);
        }
        return Pattern.OfChips(squares);
    }
}
