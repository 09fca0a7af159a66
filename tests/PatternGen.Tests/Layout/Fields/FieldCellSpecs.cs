using CsCheck;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using PatternGen.Tests.Geometry;
using Polygons = NetTopologySuite.Geometries.Geometry;

namespace PatternGen.Tests.Layout.Fields;

/// <summary>Which cells a field has, against NetTopologySuite on cells worked out anew.</summary>
public class FieldCellSpecs
{
    /// <summary>How far lines stray from arcs, in mm.</summary>
    private const double Accuracy = 1e-5;

    /// <summary>A cell this near to the edge, in mm, is not asked about: far above the accuracy, and random cells are hardly ever so near.</summary>
    private const double Near = 1e-3;

    private static readonly Gen<(
        Region Outline,
        ReferenceLattice Lattice,
        Point From,
        double Turn
    )> Fields = Gen.Select(
            FieldOutlines.Any,
            Gen.Double[6, 14],
            Gen.Int[0, ReferenceLattice.All(1).Count() - 1],
            Draw.Point(20),
            Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 360])
        )
        .Select(
            (outline, size, which, from, turn) =>
                (outline, ReferenceLattice.All(size).ElementAt(which), from, turn)
        );

    [Fact]
    public void Every_cell_that_fits_is_whole_and_no_other() =>
        Fields.Sample(
            given =>
            {
                var cells = Cells(given.Outline, given.Lattice, given.From, given.Turn);
                var region = Flat.Of(given.Outline, Accuracy);
                var expected = cells.Where(cell => Fits(region, cell.Room) != false).ToArray();
                if (!expected.Any(cell => Fits(region, cell.Room) == true))
                    return;

                var chips = Fill(given).Chips.Select(chip => chip.Outline.Centroid).ToArray();

                var certain = expected.Where(cell => Fits(region, cell.Room) == true).ToArray();
                foreach (var chip in certain.SelectMany(cell => cell.Chips))
                    chips.ShouldContain(
                        middle => middle.DistanceTo(chip.Centroid) < 1e-6,
                        $"missing at {chip.Centroid}"
                    );
                var possible = expected
                    .SelectMany(cell => cell.Chips)
                    .Select(chip => chip.Centroid)
                    .ToArray();
                foreach (var chip in chips)
                    possible.ShouldContain(
                        middle => middle.DistanceTo(chip) < 1e-6,
                        $"not to be at {chip}"
                    );
                chips.Distinct().Count().ShouldBe(chips.Length);
            },
            iter: 60
        );

    [Fact]
    public void Clipped_cells_cover_what_the_outline_and_the_cells_have_in_common() =>
        Fields.Sample(
            given =>
            {
                var field = Fill(given).ClippedCells(narrowest: 0);
                var region = Flat.Of(given.Outline, Accuracy);
                var chips = Cells(given.Outline, given.Lattice, given.From, given.Turn)
                    .SelectMany(cell => cell.Chips)
                    .Where(chip => chip.Extents.Touches(given.Outline.Extents))
                    .ToArray();
                var expected = chips.Sum(chip =>
                    OverlayNGRobust
                        .Overlay(region, Flat.Polygon(chip, Accuracy), SpatialFunction.Intersection)
                        .Area
                );

                // Flattening moves each bound by the accuracy at most, straight ones not at all.
                var bounds =
                    given.Outline.Length
                    + chips
                        .Where(chip => chip.Segments.Any(side => !side.IsLine))
                        .Sum(chip => chip.Length);
                var within = Accuracy * bounds + 1e-6;
                field.Chips.Sum(Area).ShouldBe(expected, within);
                field.Fit.CarvedArea.ShouldBe(expected, within);
            },
            iter: 40
        );

    [Fact]
    public void Clipped_cells_of_a_lattice_that_tiles_cover_the_whole_outline()
    {
        foreach (var lattice in ReferenceLattice.All(9).Where(lattice => lattice.Tiles))
        foreach (
            var outline in (Region[])[FieldOutlines.Disc, FieldOutlines.Panel, FieldOutlines.Lid]
        )
        foreach (var turn in (double[])[0, 17.3, 45])
        {
            var field = Fill((outline, lattice, new(3.7, -1.2), turn)).ClippedCells(narrowest: 0);

            field.Chips.Sum(Area).ShouldBe(outline.Area, 1e-9 * outline.Area, lattice.Name);
            field.Fit.CarvedShare.ShouldBe(1, 1e-9, lattice.Name);
            field.Fit.LeftOutCells.ShouldBe(0, lattice.Name);
        }
    }

    /// <summary>
    /// Of any size and turn, also where sides of cells all but lie on the outline: what is nearer to it than the merge
    /// distance, which is 1e-9 of the extent, counts as on it, all along.
    /// </summary>
    [Fact]
    public void Clipped_cells_cover_any_outline_but_for_what_counts_as_one_line() =>
        Fields
            .Where(given => given.Lattice.Tiles)
            .Sample(
                given =>
                {
                    var fit = Fill(given).ClippedCells(narrowest: 0).Fit;
                    var (outline, extents) = (given.Outline, given.Outline.Extents);
                    var merge = 1e-9 * Math.Max(extents.Width, extents.Height);
                    fit.CarvedArea.ShouldBe(
                        outline.Area,
                        1e-9 * outline.Area + merge * outline.Length
                    );
                },
                iter: 60
            );

    [Fact]
    public void Chips_lie_inside_in_all_modes_and_keep_off_the_border() =>
        Gen.Select(Fields, Gen.Double[0.5, 4], Gen.Int[0, 2])
            .Sample(
                (given, gap, mode) =>
                {
                    var field = Fill(given).BorderGap(gap);
                    field = mode switch
                    {
                        0 => field,
                        1 => field.ClippedCells(narrowest: 0),
                        _ => field.ShrunkCells(),
                    };
                    foreach (var chip in ChipsOf(field))
                    {
                        var nearest = chip
                            .Outline.Segments.SelectMany(side =>
                                given.Outline.Contours.SelectMany(ring =>
                                    ring.Segments.Select(edge => side.NearestTo(edge).Distance)
                                )
                            )
                            .Min();
                        nearest.ShouldBeGreaterThan(gap - 1e-6);
                        given.Outline.Contains(chip.Outline.PointAt(0)).ShouldBeTrue();
                    }
                },
                iter: 40
            );

    /// <summary>
    /// For each cell at the edge: drawn larger by a little more than what another place must gain, about any corner or middle
    /// of a side from which all of the cell is seen, it does not lie inside.
    /// </summary>
    [Fact]
    public void Smaller_cells_are_as_large_as_fits() =>
        Fields
            .Where(given => given.Lattice.IsPlain)
            .Sample(
                given =>
                {
                    const double smallest = 0.3;
                    var cells = Cells(given.Outline, given.Lattice, given.From, given.Turn)
                        .Where(cell => cell.Room.Extents.Touches(given.Outline.Extents))
                        .ToArray();
                    var region = Flat.Of(given.Outline, Accuracy);
                    var chips = ChipsOf(Fill(given).ShrunkCells(smallest));
                    foreach (var (room, _) in cells)
                    {
                        if (Fits(region, room) != false)
                            continue;
                        var mine = Array.FindAll(
                            chips,
                            chip => room.Contains(chip.Outline.Centroid)
                        );
                        mine.Length.ShouldBeLessThanOrEqualTo(1);
                        foreach (var chip in mine)
                        {
                            chip.Placement.Scale.ShouldBeInRange(smallest, 1);
                            foreach (var corner in chip.Outline.Vertices)
                                (
                                    room.Contains(corner.Point)
                                    || room.DistanceTo(corner.Point) < 1e-6
                                ).ShouldBeTrue();
                        }
                        var larger =
                            (mine.Length > 0 ? mine[0].Placement.Scale : smallest) + 0.0101;
                        if (larger >= 1)
                            continue;
                        foreach (
                            var place in room.Segments.SelectMany(side =>
                                (Point[])[side.Start, side.Middle]
                            )
                        )
                        {
                            var scaled = room.Transformed(Transform.Resize(larger, place));
                            if (SeesAll(room, place))
                                region
                                    .Covers(Flat.Polygon(scaled, Accuracy))
                                    .ShouldBeFalse($"{larger} about {place} would fit");
                        }
                    }
                },
                iter: 15
            );

    [Theory]
    [InlineData(0.5)]
    [InlineData(1.5)]
    public void Ridges_between_cells_are_as_wide_as_asked(double gap)
    {
        foreach (var lattice in ReferenceLattice.All(16))
        {
            var field = lattice.Fill(Field.Within(FieldOutlines.Lid)).RidgeGap(gap);
            var chips = field.Chips.ToArray();
            var nearest = double.PositiveInfinity;
            for (var i = 0; i < chips.Length; i++)
            for (var k = 0; k < i; k++)
                if (chips[i].Outline.Extents.Grown(2 * gap).Touches(chips[k].Outline.Extents))
                    nearest = Math.Min(
                        nearest,
                        chips[i]
                            .Outline.Segments.SelectMany(side =>
                                chips[k]
                                    .Outline.Segments.Select(other =>
                                        side.NearestTo(other).Distance
                                    )
                            )
                            .Min()
                    );
            // Neighbours have a side or a corner in common, and each keeps half the gap from it.
            nearest.ShouldBeGreaterThan(gap - 1e-9, lattice.Name);
            if (lattice.Tiles)
                nearest.ShouldBe(gap, 1e-9, lattice.Name);
        }
    }

    /// <summary>By areas: drawn smaller about the place, the cell does not stick out of itself.</summary>
    private static bool SeesAll(Contour room, Point place)
    {
        var cell = Flat.Polygon(room, 1e-4);
        for (var factor = 0.1; factor < 1; factor += 0.1)
        {
            var inner = Flat.Polygon(room.Transformed(Transform.Resize(factor, place)), 1e-4);
            var outside = OverlayNGRobust.Overlay(inner, cell, SpatialFunction.Difference);
            if (outside.Area > 2e-4 * room.Length)
                return false;
        }
        return true;
    }

    /// <summary>The chips, or none if nothing fits, which other tests are about.</summary>
    private static Chip[] ChipsOf(CarvedField field)
    {
        try
        {
            return [.. field.Chips];
        }
        catch (PatternException)
        {
            return [];
        }
    }

    private static CarvedField Fill(
        (Region Outline, ReferenceLattice Lattice, Point From, double Turn) given
    ) => given.Lattice.Fill(Field.Within(given.Outline)).From(given.From).LatticeTurned(given.Turn);

    private static List<(Contour Room, Contour[] Chips)> Cells(
        Region outline,
        ReferenceLattice lattice,
        Point from,
        double turn
    )
    {
        var extents = outline.Extents;
        var reach = extents.Width + extents.Height + from.DistanceTo(extents.Centre);
        var place = Transform.Rotate(turn).Then(Transform.Move(from - Point.Origin));
        var window = extents.Grown(1);
        return
        [
            .. lattice
                .Cells(reach)
                .Select(cell =>
                    (
                        Room: cell.Room.Transformed(place),
                        Chips: cell.Chips.Select(chip => chip.Transformed(place)).ToArray()
                    )
                )
                .Where(cell => cell.Room.Extents.Touches(window)),
        ];
    }

    /// <summary>Whether a cell lies inside; null if that is too close to say.</summary>
    private static bool? Fits(Polygons region, Contour cell)
    {
        var flat = Flat.Polygon(cell, Accuracy);
        if (region.Covers(flat))
            return region.Boundary.Distance(flat) > Near ? true : null;
        var outside = OverlayNGRobust.Overlay(flat, region, SpatialFunction.Difference);
        return outside.Area > Near * cell.Length ? false : null;
    }

    private static double Area(Chip chip) =>
        chip.Outline.SignedArea + chip.Holes.Sum(hole => hole.SignedArea);
}
