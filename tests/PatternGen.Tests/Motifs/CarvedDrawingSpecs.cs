using PatternGen.Tests.Compass;

namespace PatternGen.Tests.Motifs;

public class CarvedDrawingSpecs
{
    private static readonly CompassDrawing Six = Figures.Of(Figures.Petals(6));

    [Fact]
    public void Each_carved_part_is_a_chip_in_the_row_of_its_orbit()
    {
        var carved = Six.Carve(part => part.Orbit is 1 or 3);

        carved.ChipCount.ShouldBe(12);
        carved.Parts.Count.ShouldBe(12);
        var chips = carved.Chips.ToList();
        chips
            .Select(chip => chip.Id)
            .ShouldBe([
                .. Enumerable.Range(1, 6).Select(i => new ChipId(1, i)),
                .. Enumerable.Range(1, 6).Select(i => new ChipId(3, i)),
            ]);
        foreach (var (chip, part) in chips.Zip(carved.Parts))
            chip.Outline.Vertices.ShouldBe(part.Outline.Vertices);
        carved.LayoutLines.ShouldBeEmpty();
    }

    /// <summary>A petal is twice a circular segment of 60 degrees (MathWorld); all seven circles cover (2π + 3√3) R² (elementary).</summary>
    [Fact]
    public void The_carved_share_is_that_of_the_areas()
    {
        var petals = Six.CarveOrbits(1);
        var all = (2 * Math.PI + 3 * Math.Sqrt(3)) * 1600;

        petals.CarvedShare.ShouldBe(6 * 0.181172147412159 * 1600 / all, 1e-12);
        petals.Chips.Sum(chip => chip.Outline.Area).ShouldBe(petals.CarvedShare * all, 1e-6);
    }

    [Fact]
    public void The_reverse_carves_what_stood()
    {
        var carved = Six.CarveOrbits(1, 4);
        var reverse = carved.Reverse();

        reverse.Parts.ShouldBe(Six.Parts.Except(carved.Parts));
        reverse.Reverse().Parts.ShouldBe(carved.Parts);
        (carved.CarvedShare + reverse.CarvedShare).ShouldBe(1, 1e-12);
        Should.Throw<PatternException>(() => Six.Carve(_ => true).Reverse());
    }

    [Fact]
    public void Plain_parts_stay_ground()
    {
        var drawing = Figures.RingOfCells(8);

        drawing.Carve(_ => true).ChipCount.ShouldBe(8);
        drawing.Carve(part => part.Number == 2).Reverse().ChipCount.ShouldBe(7);
        drawing.Carve(part => part.Number == 2).And(_ => true).ChipCount.ShouldBe(8);
        var refusal = Should.Throw<PatternException>(() => drawing.CarveAt(new Point(1, 1)));
        refusal.Message.ShouldContain("stays ground");
        refusal.Remedies[0].ShouldContain("orbit 2: 8 × 4 sides");
        Should.Throw<PatternException>(() => drawing.CarveOrbits(1));
    }

    [Fact]
    public void A_point_chooses_the_part_that_it_lies_in()
    {
        Six.CarveAt(new(20, 0), new(30, 0)).Parts.ShouldBe([Six.OrbitParts(1)[0]]);
        Six.CarveAt([new(20, 0), new(70, 0)]).Parts.Select(part => part.Orbit).ShouldBe([1, 4]);

        var outside = Should.Throw<PatternException>(() => Six.CarveAt(new Point(100, 0)));
        outside.Place.ShouldBe(new Point(100, 0));
        outside.Message.ShouldContain("outside the figure");
        var onLine = Should.Throw<PatternException>(() => Six.CarveAt(new Point(40, 0)));
        onLine.Message.ShouldContain("on a line");
        onLine.Remedies.ShouldHaveSingleItem().ShouldContain("well inside the part");
        Should.Throw<ArgumentException>(() => Six.CarveAt());
        Should.Throw<ArgumentException>(() => Six.CarveOrbits());
        Should
            .Throw<ArgumentOutOfRangeException>(() => Six.CarveOrbits(1, 5))
            .ParamName.ShouldBe("orbits");
    }

    [Fact]
    public void Open_lines_bound_nothing_that_a_point_or_a_number_could_choose()
    {
        var open = Figures.Of([new Segment(new(0, 0), new(10, 0))]);

        foreach (
            var carve in (Action[])
                [
                    () => open.CarveAt(new Point(5, 1)),
                    () => open.CarveAt(new Point(5, 0)),
                    () => open.CarveOrbits(1),
                ]
        )
        {
            var refusal = Should.Throw<PatternException>(carve);
            refusal.Message.ShouldContain("bound no part");
            refusal.Remedies.ShouldHaveSingleItem().ShouldContain("cross or close");
        }
    }

    [Fact]
    public void To_carve_nothing_is_refused_with_what_there_is()
    {
        var refusal = Should.Throw<PatternException>(() => Six.Carve(part => part.IsPetal));

        refusal.Remedies.Count.ShouldBe(4);
        refusal.Remedies[0].ShouldStartWith("orbit 1: 6 × 2 sides, 289.875436 mm²");
        Should.Throw<PatternException>(() => Six.CarveOrbits(1).Without(_ => true));
        Should
            .Throw<PatternException>(() =>
                Figures.Of([new Segment(new(0, 0), new(10, 0))]).Carve(_ => true)
            )
            .Message.ShouldContain("bound no part");
    }

    [Fact]
    public void Parts_are_added_and_left()
    {
        var carved = Six.CarveOrbits(1).And(part => part.Orbit == 2);

        carved.ChipCount.ShouldBe(12);
        carved.Without(part => part.Orbit == 1).Parts.ShouldBe(Six.OrbitParts(2));
    }

    [Fact]
    public void Neighbours_share_their_corners_to_the_last_digit()
    {
        foreach (var n in (int[])[3, 5, 6, 7, 12])
        {
            var drawing = Figures.Of(
                Figures
                    .Petals(n)
                    .Select(curve =>
                        curve.Transformed(Transform.Rotate(17).Then(Transform.Move(3, 1)))
                    )
            );
            var corners = drawing
                .Carve(_ => true)
                .Chips.SelectMany(chip => chip.Outline.Vertices.Select(v => v.Point))
                .ToList();
            foreach (var corner in corners.Distinct())
                corners.ShouldAllBe(other => other == corner || other.DistanceTo(corner) > 1e-6);
        }
    }

    [Fact]
    public void Joined_chips_lose_the_ridge_between_them()
    {
        // A petal and the two gaps beside it.
        var three = Six.CarveAt(new(20, 0), Figures.At(25, 1.0 / 12), Figures.At(25, -1.0 / 12));
        three.ChipCount.ShouldBe(3);

        var joined = three.JoinedWith((one, other) => one.Orbit != other.Orbit);

        var chip = joined.Chips.ShouldHaveSingleItem();
        chip.Id.ShouldBe(new ChipId(1, 1));
        chip.Outline.Area.ShouldBe((0.181172147412159 + 2 * 0.342426628186140) * 1600, 1e-9);
        chip.Holes.ShouldBeEmpty();
        joined.ChipCount.ShouldBe(1);
        three.JoinedWith((_, _) => false).ChipCount.ShouldBe(3);
    }

    [Fact]
    public void Chips_joined_in_a_round_have_a_hole()
    {
        var ring = Figures.RingOfCells(8).Carve(_ => true).JoinedWith((_, _) => true);

        var chip = ring.Chips.ShouldHaveSingleItem();
        chip.Holes.ShouldHaveSingleItem().Area.ShouldBe(400 * Math.PI, 1e-9);
        chip.Outline.Area.ShouldBe(1600 * Math.PI, 1e-9);
        chip.Outline.Segments.Count().ShouldBe(2); // two half circles
    }

    [Fact]
    public void All_parts_joined_are_the_whole_figure()
    {
        foreach (var n in (int[])[3, 4, 6, 7, 12])
        {
            var drawing = Figures.Of(Figures.Petals(n));
            var chip = drawing
                .Carve(_ => true)
                .JoinedWith((_, _) => true)
                .Chips.ShouldHaveSingleItem();

            (chip.Outline.Area - chip.Holes.Sum(hole => hole.Area)).ShouldBe(
                drawing.Parts.Sum(part => part.Area),
                1e-6
            );
            chip.Outline.Locate(Point.Origin).ShouldBe(Containment.Inside);
        }
    }

    [Fact]
    public void Joints_stay_with_their_chips()
    {
        var joined = Six.CarveOrbits(1, 2)
            .JoinedWith((one, other) => one.Orbit != other.Orbit)
            .And(part => part.Orbit == 4);

        joined.ChipCount.ShouldBe(1 + 6);
        joined.Without(part => part.Orbit == 2).ChipCount.ShouldBe(6 + 6);
        joined.Reverse().Reverse().ChipCount.ShouldBe(6 + 6 + 6);
    }

    [Fact]
    public void The_other_lines_of_the_figure_are_drawn_when_asked()
    {
        var petals = Six.CarveOrbits(1).WithDrawing();

        // Seven circles, less the two sides of each petal, arcs of 60 degrees.
        petals.LayoutLines.Sum(line => line.Length).ShouldBe((7 - 12 / 6.0) * 80 * Math.PI, 1e-6);
        petals.Reverse().LayoutLines.Sum(line => line.Length).ShouldBe(0, 1e-6);
    }

    /// <summary>All seven circles cover (2π + 3√3) R², of which orbit 3 has a sixth of a circle six times (elementary).</summary>
    [Fact]
    public void The_caption_says_what_is_carved()
    {
        Six.CarveOrbits(1, 2, 4)
            .Caption()
            .ShouldBe([
                "Compass drawing 160 × 149.28 mm",
                "Orbit 1, orbit 2, orbit 4, 72.6 % of the figure",
                "18 chips",
            ]);
        Six.CarveOrbits(2).Caption()[1].ShouldStartWith("Orbit 2, ");
        Six.CarveAt(new Point(20, 0)).Caption()[1].ShouldStartWith("1 of 6 parts of orbit 1, ");
    }

    [Fact]
    public void A_design_carves_its_parts_with_the_counts_that_it_stated()
    {
        foreach (
            var design in Figures
                .Of(Figures.Petals(4))
                .AllDesigns(Symmetry.None)
                .Where((_, i) => i % 97 == 0)
        )
        {
            var carved = design.Carve();
            carved.ChipCount.ShouldBe(design.ChipCount);
            carved.Parts.ShouldBe(design.Parts);
            carved.CarvedShare.ShouldBe(design.CarvedShare, 1e-12);
        }
        Should.Throw<ArgumentException>(() => default(Design).Carve());
    }
}
