namespace PatternGen.Tests.Carving.Plan;

/// <summary>The cuts of a chip: values of published solids, and the direction that is comfortable (common practice, no source).</summary>
public class StrokeSpecs
{
    private const double Tan65 = 2.14450692050956;

    /// <summary>Pyramid over a tangential polygon: the deepest point of all three walls is the incentre, r = 1 (Euclid IV.4).</summary>
    [Fact]
    public void A_triangle_takes_three_cuts_deepest_at_its_incentre()
    {
        var plan = Plans.Of(Pattern.OfChips(Contour.Polygon(new(0, 0), new(4, 0), new(0, 3))));

        plan.Strokes.Count.ShouldBe(3);
        foreach (var cut in plan.Strokes)
        {
            cut.Kind.ShouldBe(CutKind.Cut);
            cut.Depth.ShouldBe(2.14450692050956, 1e-9);
            cut.Deepest.DistanceTo(new(1, 1)).ShouldBeLessThan(1e-9);
            (cut.StartDepth, cut.EndDepth).ShouldBe((0, 0));
            cut.BladeAngle.Degrees.ShouldBe(65, 1e-9);
            // The touching points of the incircle lie s - a from the corners: 1, 2 and 3 mm.
            var fromStart = cut.Start.DistanceTo(new(1, 1));
            cut.DeepestAlong.ShouldBe(Math.Sqrt(fromStart * fromStart - 1), 1e-9);
        }
        plan.Totals.Volume.ShouldBe(4.28901384101912, 1e-9);
        plan.Totals.Length.ShouldBe(12, 1e-9);
        plan.Totals.Deepest.ShouldBe(2.14450692050956, 1e-9);
    }

    [Fact]
    public void A_petal_takes_two_cuts_from_tip_to_tip()
    {
        var plan = Plans.Of(Plans.Petals);

        plan.Strokes.Count.ShouldBe(12);
        // Values of one petal for R = 1: depth 0.287309448756745, volume 0.0205274752964596; each side is a sixth of a circle.
        plan.Totals.Deepest.ShouldBe(40 * 0.287309448756745, 1e-9);
        plan.Totals.Volume.ShouldBe(6 * 64000 * 0.0205274752964596, 1e-3);
        plan.Totals.Length.ShouldBe(12 * 40 * Math.PI / 3, 1e-9);
        plan.Totals.ChipsOf(ChipSize.Large).ShouldBe(6);
        foreach (var cut in plan.Strokes)
        {
            (cut.StartDepth, cut.EndDepth).ShouldBe((0, 0));
            Math.Min(cut.Start.DistanceTo(Point.Origin), cut.End.DistanceTo(Point.Origin))
                .ShouldBeLessThan(1e-9);
        }
    }

    /// <summary>Semicircle: the deepest point is half-way between diameter and rim.</summary>
    [Fact]
    public void A_curved_side_and_a_straight_one_share_the_deepest_point()
    {
        var half = new Contour(new Vertex(new(-1, 0)), new Vertex(new(1, 0), 1));

        foreach (var cut in Plans.Of(Pattern.OfChips(half)).Strokes)
        {
            cut.Depth.ShouldBe(1.07225346025478, 1e-9);
            cut.Deepest.DistanceTo(new(0, 0.5)).ShouldBeLessThan(1e-6);
        }
    }

    /// <summary>
    /// L of a 2 x 2 square less a unit square: at the corner that points in, the disc that touches the side there is stopped by the side
    /// across, 1 mm away: radius 1/2. The greatest distance anywhere is 2 - √2 (published).
    /// </summary>
    [Fact]
    public void At_a_corner_that_points_in_the_knife_stops_at_depth()
    {
        var outline = Contour.Polygon(
            new(0, 0),
            new(2, 0),
            new(2, 1),
            new(1, 1),
            new(1, 2),
            new(0, 2)
        );

        var plan = Plans.Of(Pattern.OfChips(outline));

        plan.Strokes.Count.ShouldBe(6);
        foreach (var cut in plan.Strokes)
        {
            cut.StartDepth.ShouldBe(cut.Start == new Point(1, 1) ? Tan65 / 2 : 0, 1e-9);
            cut.EndDepth.ShouldBe(cut.End == new Point(1, 1) ? Tan65 / 2 : 0, 1e-9);
        }
        plan.Strokes.Max(cut => cut.Depth).ShouldBe(0.585786437626905 * Tan65, 1e-9);
    }

    [Fact]
    public void A_ring_takes_a_cut_round_its_rim_and_one_round_its_hole()
    {
        var ring = new Region(
            new Circle(Point.Origin, 6).ToContour(),
            new Circle(Point.Origin, 3).ToContour()
        );

        var plan = Plans.Of(Pattern.OfChips(ring.Parts));

        plan.Strokes.Select(cut => cut.Hole).Order().ShouldBe([0, 1]);
        plan.Totals.Length.ShouldBe(2 * Math.PI * 9, 1e-9);
        plan.Strokes.ShouldAllBe(cut => Math.Abs(cut.Depth - 1.5 * Tan65) < 1e-9);
    }

    /// <summary>Each deepest point is held against the distance to the outline, and no other place along the cut is deeper.</summary>
    [Fact]
    public void Along_no_cut_the_chip_is_deeper_than_said()
    {
        foreach (var chip in Plans.Of(Plans.Combined).Chips)
        foreach (var cut in chip.Strokes.Where(cut => cut.Kind == CutKind.Cut))
        {
            chip.Solid.DepthAt(cut.Deepest).ShouldBe(cut.Depth, 1e-6);
            var path = cut.Path;
            for (var i = 1; i < 40; i++)
            {
                var at = path.Length * i / 40;
                WallFoot(chip.Chip, path.PointAt(at), -path.NormalAt(at))
                    .ShouldBeLessThan(cut.Depth / Math.Tan(cut.BladeAngle.Radians) + 1e-6);
            }
        }
    }

    /// <summary>
    /// Common practice: the cut comes towards the carver, straight down the drawing once the board is turned; the chip on the
    /// right of the way with the right hand, on its left with the left hand.
    /// </summary>
    [Fact]
    public void The_board_is_turned_so_that_each_cut_comes_towards_the_carver()
    {
        foreach (var plan in Plans.AllWays(Plans.Combined))
        foreach (var cut in plan.Strokes)
        {
            var turned = cut.Direction.Degrees + cut.BoardTurn.Degrees;
            Math.Abs(Plans.Between(-90, turned)).ShouldBeLessThan(5 + 1e-6);
            cut.BoardTurn.Degrees.ShouldBeInRange(-180, 180);
            if (cut.Kind == CutKind.Stab)
                continue;
            var path = cut.Path;
            var middle = path.PointAt(path.Length / 2);
            var aside = path.NormalAt(path.Length / 2) * (plan.Hand == Hand.Right ? -1 : 1);
            IsIn(cut.Chip.Chip, middle + aside * 1e-3).ShouldBeTrue();
            IsIn(cut.Chip.Chip, middle - aside * 1e-3).ShouldBeFalse();
        }
    }

    [Fact]
    public void Every_side_of_every_chip_is_cut_once_in_either_order()
    {
        foreach (var plan in Plans.AllWays(Plans.Combined))
        {
            plan.Strokes.Where(cut => cut.Side > 0)
                .Select(cut => (cut.Chip.Chip.Id, cut.Side))
                .ShouldBeUnique();
            foreach (var chip in plan.Chips)
            {
                var outline = chip.Chip.Outline.Length + chip.Chip.Holes.Sum(hole => hole.Length);
                chip.Strokes.Where(cut => cut.Side > 0)
                    .Sum(cut => cut.Length)
                    .ShouldBe(outline, 1e-6);
            }
            plan.Steps.SelectMany(step => step.Strokes).ShouldBe(plan.Strokes);
            plan.Chips.Select(chip => chip.Number)
                .ShouldBe(Enumerable.Range(1, (int)Plans.Combined.ChipCount));
        }
    }

    private static bool IsIn(Chip chip, Point point) =>
        chip.Outline.Locate(point) == Containment.Inside
        && chip.Holes.All(hole => hole.Locate(point) != Containment.Inside);

    /// <summary>How far a disc grows that touches the side from within at a place, by halving.</summary>
    private static double WallFoot(Chip chip, Point edge, Vector inward)
    {
        var (fits, not) = (0.0, 100.0);
        for (var i = 0; i < 60; i++)
        {
            var radius = (fits + not) / 2;
            var centre = edge + inward * radius;
            var isFree =
                IsIn(chip, centre)
                && chip.Outline.DistanceTo(centre) >= radius - 1e-9
                && chip.Holes.All(hole => hole.DistanceTo(centre) >= radius - 1e-9);
            (fits, not) = isFree ? (radius, not) : (fits, radius);
        }
        return fits;
    }
}
