using PatternGen.Tests.Motifs.FreeForm;

namespace PatternGen.Tests.Layout;

public class GridLayoutSpecs
{
    private static readonly RailBorder Border = Rail.Of(742.5, 36)
        .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
        .EndMargins(6);

    [Fact]
    public void Every_corner_of_a_snapped_rail_lies_on_the_grid()
    {
        var snapped = Border.SnapTo(Grid.Square(0.5));

        snapped.LeftAlone.ShouldBeEmpty();
        snapped.ChipCount.ShouldBe(Border.ChipCount);
        foreach (var vertex in snapped.Chips.SelectMany(chip => chip.Outline.Vertices))
        {
            (vertex.Point.X * 2).ShouldBe(Math.Round(vertex.Point.X * 2), 1e-9);
            (vertex.Point.Y * 2).ShouldBe(Math.Round(vertex.Point.Y * 2), 1e-9);
        }
    }

    [Fact]
    public void The_largest_move_is_told_and_no_corner_moved_farther()
    {
        var snapped = Border.SnapTo(Grid.Square(0.5));

        var moves = Border
            .Chips.Zip(snapped.Chips)
            .SelectMany(pair =>
                pair.First.Outline.Vertices.Zip(
                    pair.Second.Outline.Vertices,
                    (before, after) => before.Point.DistanceTo(after.Point)
                )
            )
            .ToArray();
        snapped.LargestMove.ShouldBeGreaterThanOrEqualTo(moves.Max());
        // Half the diagonal of a square of the grid.
        snapped.LargestMove.ShouldBeLessThanOrEqualTo(0.25 * Math.Sqrt(2) + 1e-12);
        snapped.Caption()[^2].ShouldContain("on the grid");
    }

    [Fact]
    public void Ids_stay_and_snapping_twice_changes_nothing()
    {
        var once = Border.SnapTo(Grid.Square(0.5));
        var twice = once.SnapTo(Grid.Square(0.5));

        once.Chips.Select(chip => chip.Id).ShouldBe(Border.Chips.Select(chip => chip.Id));
        twice.LargestMove.ShouldBe(0);
        twice
            .Chips.Select(chip => chip.Outline.Vertices)
            .ShouldBe(once.Chips.Select(chip => chip.Outline.Vertices));
    }

    [Fact]
    public void A_chip_that_would_collapse_is_left_and_named()
    {
        var small = Pattern.OfChips(
            new Contour(new(0.1, 0.1), new(1.1, 0.2), new(0.4, 1.2)),
            new Contour(new(10, 10), new(18, 10), new(14, 16))
        );

        var snapped = small.SnapTo(Grid.Square(4));

        var left = snapped.LeftAlone.ShouldHaveSingleItem();
        left.Chip.ShouldBe(new ChipId(1, 1));
        left.Layer.ShouldBe(Layer.Chips);
        left.Reason.ShouldContain("corner would meet");
        snapped.Chips.First().Outline.Vertices.ShouldBe(small.Chips.First().Outline.Vertices);
    }

    [Fact]
    public void A_chip_and_its_hole_are_left_together()
    {
        // Rounded to fours, the hole would lie on the outline.
        var chip = new Region(
            Contour.Rectangle(new(0, 0), new(12, 12)),
            Contour.Rectangle(new(1, 1), new(11, 11))
        ).Parts;
        var snapped = Pattern.OfChips(chip).Moved(0.5, 0.5).SnapTo(Grid.Square(4));

        snapped.LeftAlone.ShouldHaveSingleItem().Chip.ShouldBe(new ChipId(1, 1));
        snapped.LargestMove.ShouldBe(0);
    }

    [Fact]
    public void A_rosette_is_snapped_to_rings_and_rays()
    {
        var petals = Rosette.Petals(12, 40).Carve(part => part.IsPetal);
        var snapped = petals.SnapTo(PolarGrid.Of(0.75, 24));

        snapped.LeftAlone.ShouldBeEmpty();
        foreach (var vertex in snapped.Chips.SelectMany(chip => chip.Outline.Vertices))
        {
            var rings = vertex.Point.DistanceTo(Point.Origin) / 0.75;
            rings.ShouldBe(Math.Round(rings), 1e-9);
        }
    }

    [Fact]
    public void The_grain_of_a_rail_goes_with_it()
    {
        var upright = Border.Turned(90);
        var stock = Stock.Thick(20).GrainAlong(0);

        upright
            .SnapTo(Grid.Square(0.5))
            .Chips.First()
            .GrainOn(stock)
            .Degrees.ShouldBe(upright.Chips.First().GrainOn(stock).Degrees);
    }

    [Fact]
    public void A_grid_is_drawn_on_a_layer_of_its_own_over_the_wood()
    {
        var ruled = Rail.Of(100, 36)
            .Border(TriangleBand.Ruled(2, 4, 4, 2))
            .WithGrid(Grid.Square(2));

        var svg = Saved(ruled, FileFormat.Svg, For.Paper);
        svg.ShouldContain("id=\"grid\"");
        // 51 upright and 19 level lines on 100 × 36 mm.
        var lines = ruled.Root.Layers.HasFlag(LayerSet.Grid)
            ? PatternReader.Read(ruled.Root).GridLines
            : [];
        lines.Count.ShouldBe(51 + 19);
        ruled.Extents.ShouldBe(Rail.Of(100, 36).Border(TriangleBand.Ruled(2, 4, 4, 2)).Extents);
        Saved(ruled, FileFormat.Dxf, For.Machine).ShouldContain("GRID");
        Saved(Border, FileFormat.Dxf, For.Machine).ShouldNotContain("GRID");
    }

    [Fact]
    public void Rings_and_rays_end_at_the_edge_of_the_wood()
    {
        var disc = Pattern.OfStock(Contour.Rectangle(new(-30, -20), new(30, 20)));
        var lines = PatternReader.Read(disc.WithGrid(PolarGrid.Of(5, 12)).Root).GridLines;

        lines.ShouldNotBeEmpty();
        foreach (var line in lines)
            new Extents(new(-30, -20), new(30, 20))
                .Grown(1e-6)
                .Contains(line.Extents)
                .ShouldBeTrue();
        // Four whole rings lie on the wood; those of 25 and 30 mm and more are cut into arcs.
        lines.Count(line => line.Start.DistanceTo(line.End) < 1e-9).ShouldBe(4);
    }

    [Fact]
    public void A_grid_too_fine_to_print_is_refused_with_a_step_that_works()
    {
        var refusal = Should.Throw<PatternException>(() => Border.WithGrid(Grid.Square(0.01)));

        var times = FreeFormChecks.NumberIn(refusal.Remedies.Single());
        Border.WithGrid(Grid.Square(0.01 * times)).ShouldNotBeNull();
    }

    [Fact]
    public void Rings_too_fine_to_print_are_refused_with_a_distance_that_works_however_many_rays_there_are()
    {
        var refusal = Should.Throw<PatternException>(() =>
            Border.WithGrid(PolarGrid.Of(0.5, 3600))
        );

        var step = FreeFormChecks.NumberIn(refusal.Remedies.Single());
        Border.WithGrid(PolarGrid.Of(step, 3600)).ShouldNotBeNull();
    }

    private static string Saved(Pattern pattern, FileFormat format, For purpose)
    {
        using var stream = new MemoryStream();
        pattern.Save(stream, format, purpose);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }
}
