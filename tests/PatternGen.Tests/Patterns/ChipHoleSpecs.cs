using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Patterns;

/// <summary>Chips in which ground stays standing.</summary>
public class ChipHoleSpecs
{
    private static readonly RegionPart Ring = Part(Shapes.Circle(20), Shapes.Circle(12));

    /// <summary>A square of 20 mm with an L of three squares of 1 mm standing in it, unlike its mirror image.</summary>
    private static readonly RegionPart Lettered = Part(
        Shapes.Square(20),
        Shapes.LShape.Transformed(Transform.Move(3, 5))
    );

    [Fact]
    public void A_ring_is_one_chip_with_the_area_between_its_circles()
    {
        var chip = Pattern.OfChips(Ring).Chips.ShouldHaveSingleItem();

        chip.Outline.SignedArea.ShouldBe(Math.PI * 400, 1e-9);
        chip.Holes.ShouldHaveSingleItem().SignedArea.ShouldBe(-Math.PI * 144, 1e-9);
        // Flattened, each circle loses up to the accuracy all along.
        Flattened(chip).Area.ShouldBe(Math.PI * (400 - 144), Flat.Accuracy * Math.Tau * 32);
    }

    [Fact]
    public void A_chip_without_holes_has_none()
    {
        var chip = Pattern.OfChips(Part(Shapes.Square(3))).Chips.Single();

        chip.Holes.ShouldBeEmpty();
        chip.ShapeHoles.ShouldBeEmpty();
    }

    [Fact]
    public void Each_part_of_a_region_is_a_chip_of_one_row()
    {
        // In the ring's hole lies a disc, which is a part of its own.
        var target = new Region(Shapes.Circle(20), Shapes.Circle(12), Shapes.Circle(4));

        var chips = Pattern.OfChips([.. target.Parts, Lettered]).Chips.ToArray();

        chips.Select(chip => chip.Id.ToString()).ShouldBe(["1.1", "1.2", "1.3"]);
        chips.Select(chip => chip.Holes.Count).ShouldBe([1, 0, 1]);
        Pattern.OfChips(Region.Empty.Parts).ChipCount.ShouldBe(0);
    }

    [Fact]
    public void Repeats_share_outline_and_holes_in_memory()
    {
        var chips = Pattern.OfChips(Lettered).Repeated(1000, 21).Turned(5).Chips.ToArray();

        chips.Length.ShouldBe(1000);
        chips.ShouldAllBe(chip => ReferenceEquals(chip.Shape, chips[0].Shape));
        chips.ShouldAllBe(chip => ReferenceEquals(chip.ShapeHoles[0], chips[0].ShapeHoles[0]));
    }

    [Fact]
    public void Holes_agree_with_shape_and_placement_and_stay_clockwise()
    {
        var pattern = Pattern
            .Combine(Pattern.OfChips(Lettered, Ring), Pattern.OfChips(Shapes.Square(1)))
            .Repeated(3, 47)
            .MirroredLeftRight(2)
            .Turned(30, new(1, 1))
            .Scaled(1.5)
            .MirroredTopBottom()
            .MirroredTopBottom(5);

        foreach (var chip in pattern.Chips)
        {
            chip.Holes.Count.ShouldBe(chip.ShapeHoles.Count);
            foreach (var (hole, shape) in chip.Holes.Zip(chip.ShapeHoles))
            {
                hole.SignedArea.ShouldBeNegative();
                hole.SignedArea.ShouldBe(shape.SignedArea * 2.25, 1e-9);
                var placed = shape.Transformed(chip.Placement);
                placed.Vertices.Count.ShouldBe(hole.Vertices.Count);
                foreach (var corner in placed.Vertices)
                    hole.DistanceTo(corner.Point).ShouldBeLessThan(1e-9);
                placed.Centroid.DistanceTo(hole.Centroid).ShouldBeLessThan(1e-9);
            }
        }
    }

    [Fact]
    public void A_mirrored_hole_lies_on_the_other_side()
    {
        // The corner of the L lies at (3, 5), its centre of gravity at (3 + 5/6, 5 + 5/6).
        var chip = Pattern.OfChips(Lettered).MirroredLeftRight(10).Chips.Single();

        chip.Holes[0].Centroid.DistanceTo(new(20 - 3 - 5 / 6.0, 5 + 5 / 6.0)).ShouldBe(0, 1e-12);
        chip.Outline.Extents.ShouldBe(new(new(0, 0), new(20, 20)));
    }

    [Fact]
    public void Extents_are_those_of_the_outline()
    {
        var extents = Pattern.OfChips(Ring).Extents.ShouldNotBeNull();

        extents.Min.DistanceTo(new(-20, -20)).ShouldBeLessThan(1e-9);
        extents.Max.DistanceTo(new(20, 20)).ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void Holes_may_touch_the_outline_and_each_other_in_points()
    {
        // Two circles of radius 5 side by side in one of radius 10: they touch it, and each other in the centre.
        var pattern = Pattern.OfChips(
            Part(Shapes.Circle(10), Shapes.Circle(5, x: -5), Shapes.Circle(5, x: 5))
        );

        pattern.Chips.Single().Holes.Count.ShouldBe(2);
    }

    [Fact]
    public void A_hole_that_crosses_the_outline_is_refused_and_says_where()
    {
        // A square from the centre of a disc of radius 20 to where its corner is 18 √2 mm away.
        var across = Contour.Rectangle(Point.Origin, new(18, 18));

        var error = Should.Throw<PatternException>(() =>
            Pattern.OfChips(Ring, Part(Shapes.Circle(20), across))
        );

        error.Place!.Value.DistanceTo(Point.Origin).ShouldBe(20, 1e-9);
        error.Place.Value.DistanceTo(new(18, 18)).ShouldBe(18 - Math.Sqrt(400 - 18 * 18), 1e-9);
        error.Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_hole_that_runs_along_the_outline_is_refused_and_says_where()
    {
        var beside = Contour.Rectangle(new(15, 5), new(20, 6));

        var error = Should.Throw<PatternException>(() =>
            Pattern.OfChips(Part(Shapes.Square(20), beside))
        );

        error.Place!.Value.X.ShouldBe(20, 1e-9);
        error.Message.ShouldContain("along");
    }

    [Fact]
    public void A_hole_needs_an_area_and_must_not_cross_itself()
    {
        var line = Contour.Polygon(new(3, 3), new(4, 4), new(5, 5));
        var bow = Contour.Polygon(new(3, 3), new(7, 7), new(7, 3), new(3, 6));

        Should
            .Throw<ArgumentException>(() => Pattern.OfChips(Part(Shapes.Square(20), line)))
            .Message.ShouldContain("no area");
        Should.Throw<PatternException>(() => Pattern.OfChips(Part(Shapes.Square(20), bow)));
        Should.Throw<ArgumentNullException>(() => Pattern.OfChips(Ring, null!));
    }

    [Fact]
    public void Faces_of_a_drawing_are_chips()
    {
        // A circle, and a square standing in it.
        var drawing = Arrangement.Of([
            new Circle(Point.Origin, 10),
            .. Shapes.Square(4).Segments.Select(side => (Curve)side),
        ]);

        var chips = Pattern.OfChips(drawing.BoundedFaces.Select(face => face.ToPart())).Chips;

        chips
            .Select(chip => chip.Outline.SignedArea + chip.Holes.Sum(hole => hole.SignedArea))
            .Order()
            .ShouldBe([16, Math.PI * 100 - 16], 1e-9);
    }

    [Fact]
    public void A_row_without_chips_keeps_its_number()
    {
        ChipShape chip = new(Shapes.Square(1));
        var motif = new MotifNode
        {
            ChipRows =
            [
                [chip, chip],
                [],
                [chip],
            ],
        };

        var root = GroupNode.Of(new RepeatNode(motif, new(0, 4, 4), 0, 2), motif);

        PatternReader
            .Chips(root)
            .Select(read => read.Id.ToString())
            .ShouldBe(["1.1", "1.2", "3.1", "1.3", "1.4", "3.2", "4.1", "4.2", "6.1"]);
        root.ChipCount.ShouldBe(9);
    }

    private static RegionPart Part(params Contour[] rings) => new Region(rings).Parts.Single();

    private static NetTopologySuite.Geometries.Geometry Flattened(Chip chip) =>
        Flat.Of(new Region(chip.Holes.Prepend(chip.Outline)));
}
