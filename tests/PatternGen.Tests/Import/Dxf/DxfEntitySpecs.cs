namespace PatternGen.Tests.Importing.Dxf;

/// <summary>Group codes and their meaning are those of the DXF Reference; values follow from elementary geometry.</summary>
public sealed class DxfEntitySpecs
{
    [Fact]
    public void A_quarter_arc_runs_counter_clockwise_from_start_to_end_angle()
    {
        var chain = DxfFile
            .Import(DxfFile.Of("0 ARC 10 5 20 7 40 10 50 0 51 90"))
            .Chains.ShouldHaveSingleItem();

        chain.Start.DistanceTo(new(15, 7)).ShouldBeLessThan(1e-12);
        chain.End.DistanceTo(new(5, 17)).ShouldBeLessThan(1e-12);
        chain.Length.ShouldBe(10 * Math.PI / 2, 1e-12);
    }

    [Theory]
    [InlineData(350, 10, 20)]
    [InlineData(-10, 10, 20)]
    [InlineData(10, 350, 340)]
    [InlineData(0, 359.999999, 359.999999)]
    public void An_arc_may_pass_zero_degrees_and_be_nearly_whole(
        double from,
        double to,
        double sweep
    )
    {
        var drawing = DxfFile.Import(
            DxfFile.Of(FormattableString.Invariant($"0 ARC 10 0 20 0 40 100 50 {from} 51 {to}")),
            ImportSettings.Default.WithJoinWithin(0)
        );

        drawing.Chains.ShouldHaveSingleItem().Length.ShouldBe(100 * sweep * Math.PI / 180, 1e-9);
    }

    [Fact]
    public void A_circle_is_one_closed_curve()
    {
        var circle = DxfFile
            .Import(DxfFile.Of("0 CIRCLE 10 1 20 2 40 3"))
            .Contours.ShouldHaveSingleItem();

        circle.SignedArea.ShouldBe(9 * Math.PI, 1e-12);
        circle.Extents.Centre.DistanceTo(new(1, 2)).ShouldBeLessThan(1e-12);
    }

    [Theory]
    // The bulge of the last corner belongs to the side that closes.
    [InlineData("70 1 10 0 20 0 10 10 20 0 10 10 20 10 10 0 20 10 42 1", 100 + 12.5 * Math.PI)]
    [InlineData("70 1 10 0 20 0 42 -1 10 10 20 0 10 10 20 10 10 0 20 10", 100 - 12.5 * Math.PI)]
    // Three quarters of a circle: tan(270° / 4) = 1 + √2.
    [InlineData("70 1 10 0 20 0 42 2.414213562373095 10 0 20 10", 0.75 * 50 * Math.PI + 25)]
    public void A_polyline_has_arcs_where_it_has_bulges(string corners, double area)
    {
        var contour = DxfFile
            .Import(DxfFile.Of($"0 LWPOLYLINE 100 AcDbPolyline 90 4 {corners}"))
            .Contours.ShouldHaveSingleItem();

        contour.Area.ShouldBe(area, 1e-9);
    }

    [Theory]
    [InlineData("70 1 10 0 20 0 10 4 20 0 10 4 20 3 10 0 20 0", 1)]
    [InlineData("70 0 10 0 20 0 10 4 20 0 10 4 20 3 10 0 20 0", 0)]
    [InlineData("70 1 10 0 20 0 10 0 20 0 10 4 20 0 10 4 20 0 10 4 20 3", 1)]
    public void A_first_corner_given_again_and_doubled_corners_make_no_difference(
        string corners,
        int changed
    )
    {
        var drawing = DxfFile.Import(DxfFile.Of($"0 LWPOLYLINE 90 9 {corners}"));

        var contour = drawing.Contours.ShouldHaveSingleItem();
        contour.Count.ShouldBe(3);
        contour.Area.ShouldBe(6, 1e-12);
        drawing.Notes.Count(note => note.Kind == ImportNoteKind.Changed).ShouldBe(changed);
    }

    [Fact]
    public void An_old_polyline_has_a_corner_to_each_vertex_but_those_of_its_frame()
    {
        var contour = DxfFile
            .Import(
                DxfFile.Of(
                    "0 POLYLINE 66 1 70 5 10 0 20 0 30 0",
                    "0 VERTEX 10 0 20 0 70 16 0 VERTEX 10 0 20 0 70 8 0 VERTEX 10 50 20 50 70 16",
                    "0 VERTEX 10 6 20 0 42 1 70 8 0 VERTEX 10 6 20 8 70 8 0 SEQEND"
                )
            )
            .Contours.ShouldHaveSingleItem();

        contour.Area.ShouldBe(24 + 8 * Math.PI, 1e-12);
    }

    [Theory]
    [InlineData("0 LINE 10 0 20 0 30 0 11 5 21 0 31 1", "line that is not level")]
    [InlineData(
        "0 POLYLINE 70 8 0 VERTEX 10 0 20 0 30 0 0 VERTEX 10 1 20 0 30 2 0 SEQEND",
        "polyline that is not level"
    )]
    [InlineData(
        "0 POLYLINE 70 16 71 2 72 2 0 VERTEX 10 0 20 0 0 VERTEX 10 1 20 0 0 SEQEND",
        "mesh"
    )]
    [InlineData(
        "0 POLYLINE 70 64 0 VERTEX 10 0 20 0 70 192 0 VERTEX 10 1 20 0 70 192 0 SEQEND",
        "mesh"
    )]
    [InlineData("0 CIRCLE 10 0 20 0 40 5 210 1 220 0 230 0", "what lies in a slanted plane")]
    [InlineData(
        "0 LWPOLYLINE 10 0 20 0 10 1 20 1 210 0.1 220 0 230 0.9",
        "what lies in a slanted plane"
    )]
    [InlineData("0 CIRCLE 10 0 20 0 40 0", "circle without a radius")]
    [InlineData("0 LWPOLYLINE 70 1 10 0 20 0", "polyline with fewer than two corners")]
    [InlineData("0 LWPOLYLINE 90 0", "polyline with fewer than two corners")]
    [InlineData("0 POINT 10 0 20 0", "point")]
    [InlineData("0 MTEXT 10 0 20 0 1 Lid", "text")]
    [InlineData("0 HATCH 10 0 20 0 91 1 72 1 10 5 20 5", "hatching")]
    [InlineData("0 DIMENSION 2 *D1 10 0 20 0", "dimension")]
    [InlineData("0 3DSOLID 1 data", "solid or surface")]
    [InlineData("0 NEWFANGLED 10 a 20 b", "entity NEWFANGLED")]
    [InlineData("0 LINE 10 0 20 0 11 1 21 1 67 1", "what lies on a sheet of paper space")]
    [InlineData("0 LINE 10 0 20 0 11 1 21 1 60 1", "what is set invisible")]
    [InlineData("0 INSERT 2 NONE 10 0 20 0", "block \"NONE\", which the file does not hold")]
    public void What_is_no_line_in_the_plane_is_skipped_and_told(string entity, string what)
    {
        var text = DxfFile.Of(DxfFile.Line(0, 0, 9, 0), entity, entity);

        var drawing = DxfFile.Import(text);

        drawing.Chains.ShouldHaveSingleItem();
        var note = drawing.Notes.ShouldHaveSingleItem();
        (note.Kind, note.What, note.Count).ShouldBe((ImportNoteKind.Skipped, what, 2));
        // Seven groups of two lines stand before the line, which has six.
        note.Where.ShouldBe("line 28");
        note.ToString().ShouldBe($"Skipped: {what}, 2 times, first at line 28");
    }

    [Fact]
    public void What_lies_at_a_height_is_laid_flat_and_told()
    {
        var drawing = DxfFile.Import(
            DxfFile.Of("0 LINE 10 0 20 0 30 5 11 9 21 0 31 5", "0 CIRCLE 10 0 20 0 30 -2 40 1")
        );

        drawing.Contours.ShouldHaveSingleItem();
        drawing.Chains.ShouldHaveSingleItem();
        drawing
            .Notes.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe("Changed: drawn at a height, laid flat, 2 times, first at line 16");
    }

    [Fact]
    public void Seen_from_behind_x_runs_the_other_way()
    {
        var contour = DxfFile
            .Import(
                DxfFile.Of(
                    "0 LWPOLYLINE 70 1 10 0 20 0 42 1 10 10 20 0 10 10 20 5 210 0 220 0 230 -1"
                )
            )
            .Contours.ShouldHaveSingleItem();

        contour.Extents.Min.X.ShouldBe(-10, 1e-12);
        contour.Extents.Max.X.ShouldBe(0, 1e-12);
        // Seen from the front, the half circle below the side stays below it.
        contour.Extents.Min.Y.ShouldBe(-5, 1e-12);
        contour.Area.ShouldBe(25 + 12.5 * Math.PI, 1e-9);
    }

    [Fact]
    public void A_whole_ellipse_has_its_area_and_its_length()
    {
        var drawing = DxfFile.Import(
            DxfFile.Of("0 ELLIPSE 10 5 20 5 11 0 21 4 40 0.75 41 0 42 6.283185307179586")
        );

        var ellipse = drawing.Contours.ShouldHaveSingleItem();
        // Half axes 4 and 3: π · 12, and 22.1034921607095 mm round (DLMF 19.30.5).
        ellipse.Area.ShouldBe(12 * Math.PI, drawing.Accuracy * 22.2);
        // At a distance all round, a curve is longer by that times a whole turn.
        ellipse.Length.ShouldBe(22.1034921607095, drawing.Accuracy * Math.Tau);
        ellipse.Extents.Height.ShouldBe(8, 2 * drawing.Accuracy);
        drawing.Accuracy.ShouldBe(0.01);
        drawing.Notes.ShouldHaveSingleItem().Kind.ShouldBe(ImportNoteKind.Changed);
    }

    [Fact]
    public void A_rational_spline_that_is_a_quarter_circle_lies_on_it()
    {
        var drawing = DxfFile.Import(
            DxfFile.Of(
                "0 SPLINE 70 4 71 2 72 6 73 3 40 0 40 0 40 0 40 1 40 1 40 1",
                "41 1 41 0.7071067811865476 41 1 10 10 20 0 30 0 10 10 20 10 30 0 10 0 20 10 30 0"
            )
        );

        var chain = drawing.Chains.ShouldHaveSingleItem();
        foreach (var corner in chain.Vertices)
            corner.Point.DistanceTo(Point.Origin).ShouldBe(10, drawing.Accuracy);
        chain.Length.ShouldBe(5 * Math.PI, drawing.Accuracy * Math.PI / 2);
    }

    [Fact]
    public void A_spline_without_control_points_goes_through_its_points()
    {
        Point[] through = [new(0, 0), new(10, 5), new(20, -5), new(30, 0)];
        var given = string.Join(' ', through.Select(p => $"11 {p.X} 21 {p.Y} 31 0"));

        var open = DxfFile.Import(DxfFile.Of($"0 SPLINE 70 8 71 3 74 4 {given}"));
        var closed = DxfFile.Import(DxfFile.Of($"0 SPLINE 70 9 71 3 74 4 {given}"));

        open.Notes.ShouldContain(note =>
            note.Kind == ImportNoteKind.Assumed && note.What.Contains("points only")
        );
        var chain = open.Chains.ShouldHaveSingleItem();
        var contour = closed.Contours.ShouldHaveSingleItem();
        foreach (var point in through)
        {
            chain.DistanceTo(point).ShouldBeLessThan(0.01 + 1e-9);
            contour.DistanceTo(point).ShouldBeLessThan(0.01 + 1e-9);
        }
    }

    [Theory]
    [InlineData(
        "70 0 71 3 10 0 20 0 10 1 20 1 10 2 20 0 10 3 20 1 40 0 40 1",
        "8 knots, but 2 are given"
    )]
    [InlineData("70 0 71 0 10 0 20 0 10 1 20 1 40 0 40 0 40 1", "degree 0")]
    [InlineData("70 0 71 2000000000 10 0 20 0 10 1 20 1 40 0", "degree 2000000000")]
    [InlineData("70 4 71 1 10 0 20 0 10 1 20 1 40 0 40 0 40 1 40 1 41 1", "has 1 weights")]
    [InlineData("70 4 71 1 10 0 20 0 10 1 20 1 40 0 40 0 40 1 40 1 41 1 41 -1", "can't be drawn")]
    [InlineData("70 0 71 1 10 0 20 0 10 1 20 1 40 0 40 3 40 1 40 1", "can't be drawn")]
    public void A_spline_that_contradicts_itself_is_an_error(string groups, string message)
    {
        var error = Should.Throw<ImportException>(() =>
            DxfFile.Import(DxfFile.Of($"0 SPLINE {groups}"))
        );

        error.Message.ShouldContain(message);
        error.Where.ShouldBe("line 16");
    }
}
