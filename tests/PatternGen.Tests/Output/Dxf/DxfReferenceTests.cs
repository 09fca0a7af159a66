using System.Globalization;

namespace PatternGen.Tests.Output.Dxf;

/// <summary>What the DXF Reference says, read from files that were written.</summary>
public class DxfReferenceTests
{
    // DXF Reference, HEADER: AC1009 is release 12, AC1015 release 2000.
    [Theory]
    [InlineData(DxfVersion.R2000, "AC1015")]
    [InlineData(DxfVersion.R12, "AC1009")]
    public void The_version_is_stated(DxfVersion version, string expected) =>
        DxfSamples
            .Read(DxfSamples.Everything(), SaveOptions.Default.WithDxfVersion(version))
            .Version.ShouldBe(expected);

    // DXF Reference, HEADER: $INSUNITS 4 is millimetres, $MEASUREMENT 1 is metric.
    [Fact]
    public void The_unit_is_the_millimetre()
    {
        var file = DxfSamples.Read(DxfSamples.Everything());

        file.Header("$INSUNITS").Single().Value.ShouldBe("4");
        file.Header("$MEASUREMENT").Single().Value.ShouldBe("1");
    }

    // DXF Reference, HEADER: $EXTMIN and $EXTMAX hold everything drawn, arcs included: the lower half of a circle of
    // radius 10 about (10, 0) reaches y = -10, which is no corner.
    [Fact]
    public void Extents_hold_the_arcs()
    {
        var bowl = new Contour([new(0, 0, 1), new(20, 0)]);

        var file = DxfSamples.Read(Pattern.OfChips(bowl));

        file.Header("$EXTMIN").Select(group => group.Number).ShouldBe([0, -10, 0]);
        file.Header("$EXTMAX").Select(group => group.Number).ShouldBe([20, 0, 0]);
    }

    // DXF Reference, VERTEX group 42: tan(included angle / 4), negative when clockwise.
    [Theory]
    [InlineData(30, 0.131652497587396)]
    [InlineData(60, 0.267949192431123)]
    [InlineData(90, 0.414213562373095)]
    [InlineData(120, 0.577350269189626)]
    [InlineData(-90, -0.414213562373095)]
    public void A_bulge_is_the_tangent_of_a_quarter_of_the_sweep(double degrees, double expected)
    {
        var arc = Segment.Arc(new(0, 0), 5, Angle.Zero, Angle.FromDegrees(degrees));
        var pattern = Pattern.OfLayoutLines(Chain.Of(arc, new Segment(arc.End, new(0, 0))));

        var corners = DxfSamples.Read(pattern).Shapes.Single().Corners;

        var start = corners.ToList().FindIndex(corner => corner.Bulge != 0);
        // The run may be drawn from either end, which turns the arc round.
        var sign = Math.Abs(corners[start].Y) < 1e-6 ? 1 : -1;
        (sign * corners[start].Bulge).ShouldBe(expected, 1e-14);
    }

    // DXF Reference, VERTEX: the bulge belongs to the segment that starts at its vertex; on a closed polyline the last
    // vertex carries the closing segment.
    [Fact]
    public void The_last_corner_of_a_closed_contour_carries_the_closing_arc()
    {
        var chip = new Contour([new(0, 0), new(8, 0), new(4, 4, 0.25)]);

        var bulges = DxfSamples.Chips(Pattern.OfChips(chip)).Single().Corners.Select(c => c.Bulge);

        bulges.ShouldBe([0, 0, 0.25]);
    }

    // DXF Reference, LWPOLYLINE: 90 number of vertices, 70 bit 1 closed, 43 constant width.
    [Fact]
    public void A_chip_is_a_closed_polyline_without_width()
    {
        var chip = DxfSamples.Chips(Pattern.OfChips(DxfSamples.Triangle)).Single().Record;

        chip.Type.ShouldBe("LWPOLYLINE");
        chip.Value(90).ShouldBe("3");
        chip.Value(70).ShouldBe("1");
        chip.Number(43).ShouldBe(0);
    }

    // DXF Reference, CIRCLE: 10, 20, 30 centre, 40 radius.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void A_whole_circle_is_a_circle(int arcs)
    {
        var sweep = Angle.OfTurn(1.0 / arcs);
        var ring = Enumerable
            .Range(0, arcs)
            .Select(i => Segment.Arc(new(50, 20), 5, sweep * i, sweep))
            .Select(arc => new Vertex(arc.Start, arc.Bulge));

        var circle = DxfSamples.Chips(Pattern.OfChips(new Contour(ring))).Single().Record;

        circle.Type.ShouldBe("CIRCLE");
        circle.Number(10).ShouldBe(50);
        circle.Number(20).ShouldBe(20);
        circle.Number(30).ShouldBe(0);
        circle.Number(40).ShouldBe(5);
    }

    // DXF Reference, LINE: 10, 20, 30 start, 11, 21, 31 end.
    [Fact]
    public void A_straight_layout_line_is_a_line()
    {
        var line = DxfSamples
            .Read(Pattern.OfLayoutLines(Chain.Line(new(1, 2), new(3.5, 4))))
            .Shapes.Single();

        line.Record.Type.ShouldBe("LINE");
        line.Corners.ShouldBe([new(1, 2, 0), new(3.5, 4, 0)]);
    }

    // DXF Reference, LAYER: 2 name, 70 flags, 62 colour (negative is off), 6 line type.
    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Every_layer_is_declared_with_a_colour_of_its_own(DxfVersion version)
    {
        var options = SaveOptions.Default.WithDxfVersion(version);

        var layers = DxfSamples
            .Read(DxfSamples.Everything(), options)
            .TableRecords("LAYER")
            .ToList();

        layers
            .Select(layer => layer.Value(2))
            .ShouldBe(["0", "NOTE", "LABELS", "LAYOUT_LINES", "LINE_CUTS", "CHIPS", "STOCK"]);
        layers
            .Skip(1)
            .Select(layer => int.Parse(layer.Value(62)!, CultureInfo.InvariantCulture))
            .ShouldBeUnique();
        layers.ShouldAllBe(layer => layer.Value(70) == "0");
    }
}
