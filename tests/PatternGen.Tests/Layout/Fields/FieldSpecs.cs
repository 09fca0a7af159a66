using PatternGen.Tests.Carving;

namespace PatternGen.Tests.Layout.Fields;

public class FieldSpecs
{
    public static TheoryData<string> Lattices =>
        [.. ReferenceLattice.All(10).Select(lattice => lattice.Name)];

    [Fact]
    public void I_can_fill_an_outline_with_triangles()
    {
        var field = Field.Within(Contour.Rectangle(new(0, 0), new(80, 60))).Triangles(side: 8);

        field.Lattice.ShouldBe(FieldLattice.Triangles);
        field.Outline.Area.ShouldBe(4800);
        field.Caption()[0].ShouldBe("Field of triangles, side 8 mm, 80 × 60 mm");
        // Rows are 6.928 mm high: four above and four below the middle. Five triangles fit on either side of the middle's
        // corner in each row, and of those the other way up one each less or more: 10 pointing one way, 9 the other.
        field.Fit.WholeCells.ShouldBe(8 * 19);
        field.ChipCount.ShouldBe(8 * 19);
        // √3/4 × 8² = 27.713 mm² each.
        field.Fit.CarvedArea.ShouldBe(8 * 19 * Math.Sqrt(3) * 16, 1e-9);
        field.Fit.CarvedShare.ShouldBe(8 * 19 * Math.Sqrt(3) * 16 / 4800, 1e-12);
        field.Fit.ToString().ShouldStartWith("152 cells whole, ");
        field.Fit.ToString().ShouldEndWith("87.8 % of the area carved");
    }

    [Fact]
    public void Every_chip_of_one_kind_is_one_shape_and_has_one_roof()
    {
        foreach (var lattice in ReferenceLattice.All(10))
        {
            var field = lattice.Fill(Field.Within(FieldOutlines.Disc));

            field
                .Chips.Select(chip => chip.Roof)
                .Distinct()
                .Count()
                .ShouldBe(lattice.Name == "hourglasses ByTurns" ? 2 : 1, lattice.Name);
            foreach (var chip in field.Chips)
                chip.Shape.Transformed(chip.Placement)
                    .CounterClockwise()
                    .Vertices[0]
                    .Point.DistanceTo(chip.Outline.Vertices[0].Point)
                    .ShouldBeLessThan(1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(Lattices))]
    public void Chips_never_overlap(string name)
    {
        foreach (var outline in (Region[])[FieldOutlines.Disc, FieldOutlines.Panel])
        foreach (var gap in (double[])[0, 1])
        {
            var lattice = ReferenceLattice.All(10).First(lattice => lattice.Name == name);
            var field = lattice.Fill(Field.Within(outline)).BorderGap(2).RidgeGap(gap);
            foreach (
                var way in (CarvedField[])[field, field.ClippedCells(), field.ShrunkCells(0.3)]
            )
                way.With(Pattern.OfStock(outline.Contours))
                    .Inspect(Knife.Held(65), Stock.Thick(20))
                    .Findings.ShouldNotContain(finding =>
                        finding.Kind == FindingKind.ChipsOverlap
                        || finding.Kind == FindingKind.OffStock
                    );
        }
    }

    /// <summary>Corners nearer than a millionth are meant to be one, and then are so to the last digit.</summary>
    [Theory]
    [MemberData(nameof(Lattices))]
    public void Neighbours_share_their_corners_to_the_last_digit(string name)
    {
        var lattice = ReferenceLattice.All(9.7).First(lattice => lattice.Name == name);
        foreach (var turn in (double[])[0, 17.3])
        {
            var field = lattice
                .Fill(Field.Within(FieldOutlines.Panel))
                .LatticeTurned(turn)
                .ClippedCells(narrowest: 0);
            var corners = field
                .Chips.SelectMany(chip => chip.Outline.Vertices)
                .Select(corner => corner.Point)
                .Distinct()
                .OrderBy(corner => corner.X)
                .ToArray();
            for (var i = 0; i < corners.Length; i++)
            for (var k = i + 1; k < corners.Length && corners[k].X - corners[i].X < 1e-6; k++)
                corners[i].DistanceTo(corners[k]).ShouldBeGreaterThan(1e-6);
        }
    }

    [Fact]
    public void The_same_field_is_the_same_bytes_every_time()
    {
        foreach (var lattice in ReferenceLattice.All(10))
        {
            byte[] Saved()
            {
                using var stream = new MemoryStream();
                lattice
                    .Fill(Field.Within(FieldOutlines.Panel))
                    .LatticeTurned(10)
                    .ClippedCells()
                    .Save(stream, FileFormat.Svg, For.Viewing);
                return stream.ToArray();
            }

            Saved().ShouldBe(Saved());
        }
    }

    [Fact]
    public void I_choose_which_cells_are_carved()
    {
        var field = Field.Within(FieldOutlines.Disc).Triangles(10);

        var up = field.Carve(CellScheme.Checkerboard, 0);
        var down = field.Carve(CellScheme.Checkerboard, 1);

        (up.ChipCount + down.ChipCount).ShouldBe(field.ChipCount);
        // A triangle that points up has two corners as low as its lowest place.
        up.Chips.Select(LowCorners).Distinct().ShouldBe([2]);
        down.Chips.Select(LowCorners).Distinct().ShouldBe([1]);

        var squares = Field.Within(FieldOutlines.Disc).Squares(10);
        squares.Carve(CellScheme.Checkerboard, 0, 1).ChipCount.ShouldBe(squares.ChipCount);
        Enumerable
            .Range(0, 3)
            .Sum(number => squares.Carve(CellScheme.ThreeByTurns, number).ChipCount)
            .ShouldBe(squares.ChipCount);
        Shared(squares.Carve(CellScheme.Checkerboard, 1)).ShouldBe(0, 1e-9);
        Shared(Field.Within(FieldOutlines.Disc).Hexagons(6).Carve(CellScheme.ThreeByTurns, 2))
            .ShouldBe(0, 1e-9);
        Rows(squares.Carve(CellScheme.Rows, 0)).ShouldAllBe(step => Math.Abs(step - 20) < 1e-9);

        static int LowCorners(Chip chip) =>
            chip.Outline.Vertices.Count(corner =>
                corner.Point.Y < chip.Outline.Extents.Min.Y + 1e-9
            );

        static double Shared(Pattern pattern) =>
            pattern.Save(Stream.Null, FileFormat.Dxf, For.Machine).SharedLength;

        static IEnumerable<double> Rows(Pattern pattern)
        {
            var rows = pattern
                .Chips.Select(chip => Math.Round(chip.Outline.Extents.Min.Y, 6))
                .Distinct()
                .Order()
                .ToArray();
            return rows.Skip(1).Zip(rows, (high, low) => high - low);
        }
    }

    [Fact]
    public void I_can_divide_cells_from_their_centre()
    {
        var field = Field.Within(FieldOutlines.Disc).Squares(12);

        var four = field.Divided(CellDivision.FromCentre);
        var two = field.Divided(CellDivision.EverySecondFromCentre);

        four.ChipCount.ShouldBe(4 * field.ChipCount);
        four.Fit.CarvedArea.ShouldBe(field.Fit.CarvedArea, 1e-9);
        two.ChipCount.ShouldBe(2 * field.ChipCount);
        two.Fit.CarvedShare.ShouldBe(field.Fit.CarvedShare / 2, 1e-12);
        // Every second quarter of a square is an hourglass; turned by turns, they are those of the lattice.
        var turned = two.Turning(CellScheme.Checkerboard, 0, 90)
            .Chips.Select(chip => chip.Outline.Centroid);
        var hourglasses = Field
            .Within(FieldOutlines.Disc)
            .Hourglasses(12)
            .Chips.Select(chip => chip.Outline.Centroid)
            .ToArray();
        turned.ShouldAllBe(middle => hourglasses.Any(other => other.DistanceTo(middle) < 1e-9));
        Field
            .Within(FieldOutlines.Disc)
            .Hexagons(8)
            .Divided(CellDivision.EverySecondFromCentre)
            .Chips.ShouldAllBe(chip => Math.Abs(chip.Outline.Area - Math.Sqrt(3) * 16) < 1e-9);
    }

    [Fact]
    public void I_can_put_rosettes_into_the_cells()
    {
        var rosette = Rosette.Petals(6, 9).Carve(part => part.IsPetal);
        var star = Rosette.Star(6, 2, 8).Carve(_ => true);
        var field = Field.Within(FieldOutlines.Lid).Squares(20).BorderGap(2).Cells(rosette);

        // The lid is 130 × 80 mm: 6 columns and 3 rows about the middle; what matters of a cell is the circle round the
        // rosette, so the corners, rounded by 30 mm, have their rosettes too if that circle lies inside.
        field.ChipCount.ShouldBe(6 * field.Fit.WholeCells);
        field.Caption()[1].ShouldBe("6 petals, radius 9 mm, in each cell");
        foreach (var chip in field.Chips)
            chip.Outline.Vertices.ShouldAllBe(corner =>
                FieldOutlines.Lid.Contours[0].DistanceTo(corner.Point) > 2 - 1e-9
            );

        var both = field.Cells(CellScheme.Checkerboard, rosette, star);
        both.Fit.WholeCells.ShouldBeGreaterThanOrEqualTo(field.Fit.WholeCells);
        both.Chips.Select(chip => chip.Roof).Distinct().Count().ShouldBeGreaterThan(2);
        field
            .Cells(CellScheme.Checkerboard, rosette, Pattern.Empty)
            .Fit.WholeCells.ShouldBeLessThan(field.Fit.WholeCells);

        var smaller = field.ShrunkCells(0.2);
        smaller.Fit.ShrunkCells.ShouldBeGreaterThan(0);
        smaller.ChipCount.ShouldBe(6 * (smaller.Fit.WholeCells + smaller.Fit.ShrunkCells));
        var clipped = field.ClippedCells();
        clipped.ChipCount.ShouldBeGreaterThan(field.ChipCount);
        foreach (var way in (CarvedField[])[field, both, smaller, clipped])
            way.Inspect(Knife.Held(), Inspections.Board)
                .Findings.ShouldNotContain(finding => finding.Kind == FindingKind.ChipsOverlap);
    }

    [Fact]
    public void Motifs_turn_and_are_mirrored_by_turns()
    {
        // Its centre of gravity lies 3 mm to the right of and 0.5 mm above the origin.
        var motif = Pattern.OfChips(Contour.Polygon(new(1, -1), new(7, 0), new(1, 2.5)));
        var field = Field
            .Within(Contour.Rectangle(new(0, 0), new(40, 20)))
            .Squares(20)
            .From(new(0, 0))
            .Cells(motif);

        Middles(field).ShouldBe([(13, 10.5), (33, 10.5)]);
        // By a quarter, (3, 0.5) goes to (-0.5, 3).
        Middles(field.Turning(CellScheme.Columns, 0, 90)).ShouldBe([(13, 10.5), (29.5, 13)]);
        Middles(field.Mirroring(CellScheme.Columns, 1)).ShouldBe([(13, 10.5), (27, 10.5)]);
        // Mirrored first, then turned: (3, 0.5) to (-3, 0.5) to (-0.5, -3).
        Middles(field.Mirroring(CellScheme.Columns, 1).Turning(CellScheme.Columns, 0, 90))
            .ShouldBe([(13, 10.5), (29.5, 7)]);

        static IEnumerable<(double, double)> Middles(Pattern pattern) =>
            pattern
                .Chips.Select(chip => chip.Outline.Centroid)
                .Select(at => (Math.Round(at.X, 9), Math.Round(at.Y, 9)));
    }

    [Fact]
    public void The_lattice_lies_where_I_say()
    {
        var panel = Field.Within(FieldOutlines.Panel);

        // A corner of squares at the middle, or a centre.
        Corners(panel.Squares(10).Centred(FieldPoint.Corner)).ShouldContain(new Point(60, 50));
        Corners(panel.Squares(10).Centred(FieldPoint.CellCentre)).ShouldContain(new Point(65, 45));
        var centroid = FieldOutlines.Panel.Centroid;
        Corners(panel.Triangles(6).Centred(FieldPoint.Corner, FieldMiddle.Centroid))
            .ShouldContain(corner => corner.DistanceTo(centroid) < 1e-9);
        Corners(panel.Hexagons(4).From(new(61.5, 22.25)))
            .ShouldContain(corner => corner.DistanceTo(new(61.5, 22.25)) < 1e-9);

        var grid = Grid.Square(5, new(1, 2), Angle.FromDegrees(30));
        foreach (var corner in Corners(panel.Squares(5).On(grid)))
            grid.Snap(corner).DistanceTo(corner).ShouldBeLessThan(1e-9);

        // Side 1 runs upwards at x = 120; a border of 3 mm leaves the row at x = 117.
        var along = panel.Hexagons(5).BorderGap(3).AlongSide(1);
        var farthest = along.Chips.Max(chip => chip.Outline.Extents.Max.X);
        farthest.ShouldBe(117, 1e-9);
        along
            .Chips.SelectMany(chip => chip.Outline.Segments)
            .ShouldContain(side =>
                Math.Abs(side.Start.X - 117) < 1e-9 && Math.Abs(side.End.X - 117) < 1e-9
            );
        Should.Throw<PatternException>(() => panel.Squares(5).AlongSide(0, ring: 1));
    }

    [Fact]
    public void Squares_fill_a_board_of_whole_squares_exactly()
    {
        foreach (var turn in (double[])[0, 33.3])
        {
            var board = Contour
                .Rectangle(new(0, 0), new(70, 40))
                .Transformed(Transform.Rotate(turn, new(20, 10)));
            var field = Field.Within(board).Squares(10).AlongSide(0);

            // 7 along a side of 70 mm, but a corner is at its middle: 3 to each side, and a half at each end.
            field.Fit.WholeCells.ShouldBe(6 * 4);
            Field
                .Within(board)
                .Squares(10)
                .On(Grid.Square(10, board.Vertices[0].Point, Angle.FromDegrees(turn)))
                .Fit.ToString()
                .ShouldBe("28 cells whole, 100 % of the area carved");
        }
    }

    [Fact]
    public void Slivers_are_dropped_counted_and_said()
    {
        var field = Field
            .Within(Contour.Rectangle(new(0, 0), new(41.5, 40)))
            .Squares(10)
            .From(default);

        var dropped = field.ClippedCells();
        dropped.Fit.Slivers.ShouldBe(4);
        dropped.Fit.SliverArea.ShouldBe(4 * 15, 1e-9);
        dropped.Fit.Narrowest.ShouldBe(2);
        dropped.Fit.LeftOutCells.ShouldBe(4);
        dropped
            .Fit.ToString()
            .ShouldEndWith("; 4 slivers narrower than 2 mm dropped, 60 mm² in all");
        var kept = field.ClippedCells(narrowest: 1.4);
        kept.Fit.Slivers.ShouldBe(0);
        kept.Fit.ClippedCells.ShouldBe(4);
        kept.Fit.CarvedShare.ShouldBe(1, 1e-12);
        // Half of what a chip of 2 mm is wide, so that small cells are not all dropped.
        field.Fit.LeftOutCells.ShouldBe(4);
        Field.Within(FieldOutlines.Disc).Squares(2).ClippedCells().Fit.Narrowest.ShouldBe(1, 1e-12);
    }

    private static IEnumerable<Point> Corners(Pattern pattern) =>
        pattern.Chips.SelectMany(chip => chip.Outline.Vertices).Select(corner => corner.Point);
}
